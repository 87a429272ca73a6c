package org.jointwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans with something broken at random: read or refused in words, never a fault. */
class PlanMutationsTest {
  private static final int TRIES = 500;
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);
  private static final List<String> HOSTILE =
      List.of(
          "null",
          "-1",
          "1e308",
          "1e-308",
          "-0",
          "0.1e1",
          "\"\"",
          "\"-\"",
          "\"1/0\"",
          "[]",
          "{}",
          "true",
          "\"\\ud800\"",
          "\"24' 6\\\"\"",
          "[[0, 0]]",
          "99999999999",
          "\"∞\"",
          "\u0000");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/drive-approach-walk.jointwright.json",
        "samples/shed-pad-with-a-drain.jointwright.json",
        "src/test/resources/cases/odd/everything.jointwright.json",
        "src/test/resources/cases/open/ring_r10_planter_r4_4in.json"
      })
  void mutatedPlanIsReadOrRefusedInWords(String file) throws IOException {
    String whole = Files.readString(Path.of(file));
    Random random = new Random(whole.length());
    for (int i = 0; i < TRIES; i++) {
      String text = mutated(whole, random);
      switch (PlanReader.read(text)) {
        case PlanReading.ReadPlan(Plan plan, List<Remark> repairs, _) -> {
          assertThat(repairs).allSatisfy(r -> assertThat(r.say(WORDS)).isNotBlank());
          String written = PlanWriter.write(plan);
          assertThat(PlanWriter.write(PlanRoundTripTest.read(written)))
              .as("try %d of %s", i, file)
              .isEqualTo(written);
        }
        case PlanReading.Refused(List<Remark> problems) ->
            assertThat(problems).allSatisfy(p -> assertThat(p.say(WORDS)).isNotBlank());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(PlanMutator.Harm.class)
  void harmedPlanIsReadOrRefusedInWords(PlanMutator.Harm harm) throws IOException {
    String good =
        Files.readString(Path.of("src/test/resources/cases/odd/everything.jointwright.json"));
    int refused = 0;
    for (long seed = 0; seed < 60; seed++) {
      if (PlanReader.read(new PlanMutator(seed).harm(harm, good))
          instanceof PlanReading.Refused r) {
        refused++;
        assertThat(r.problems())
            .as("%s by seed %d", harm, seed)
            .isNotEmpty()
            .allSatisfy(p -> assertThat(p.say(WORDS)).isNotBlank());
      }
    }
    // Most harms are past mending; an opening is put only where corners are plain numbers.
    boolean isDone = !harm.name().startsWith("OPENING");
    assertThat(refused).as("%s", harm).isGreaterThan(isDone ? 10 : -1);
  }

  @Test
  void planCutAnywhereIsRefused() throws IOException {
    String whole =
        Files.readString(Path.of("samples/patio-in-a-house-corner.jointwright.json")).strip();
    for (int end = 0; end < whole.length(); end++) {
      assertThat(PlanReader.read(whole.substring(0, end))).isInstanceOf(PlanReading.Refused.class);
    }
  }

  private static String mutated(String whole, Random random) {
    int from = random.nextInt(whole.length());
    int to = Math.min(whole.length(), from + 1 + random.nextInt(12));
    return switch (random.nextInt(4)) {
      case 0 -> whole.substring(0, from) + whole.substring(to);
      case 1 -> whole.substring(0, to) + whole.substring(from);
      case 2 ->
          whole.substring(0, from) + (char) (32 + random.nextInt(95)) + whole.substring(from + 1);
      default -> withHostileValue(whole, from, random);
    };
  }

  /** One number or text of the plan taken for something hostile. */
  private static String withHostileValue(String whole, int from, Random random) {
    int start = from;
    while (start < whole.length() && "[ ,:".indexOf(whole.charAt(start)) < 0) {
      start++;
    }
    int end = start + 1;
    while (end < whole.length() && "],}\n".indexOf(whole.charAt(end)) < 0) {
      end++;
    }
    String hostile = HOSTILE.get(random.nextInt(HOSTILE.size()));
    return start >= whole.length()
        ? whole
        : whole.substring(0, start + 1) + hostile + whole.substring(Math.min(end, whole.length()));
  }
}
