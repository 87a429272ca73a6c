package org.jointwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanRoundTripTest {
  private static final Path CASES = Path.of("src/test/resources/cases/open");
  private static final Path SAMPLES = Path.of("samples");

  static List<Path> plans() {
    return Stream.of(CASES, SAMPLES).flatMap(PlanRoundTripTest::plansIn).sorted().toList();
  }

  private static Stream<Path> plansIn(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".json")).toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Plan read(String text) {
    return switch (PlanReader.read(text)) {
      case PlanReading.ReadPlan(Plan plan, List<Remark> repairs, _) -> plan;
      case PlanReading.Refused(List<Remark> problems) ->
          throw new AssertionError(
              problems.stream().map(p -> p.say(Words.english(UnitSystem.FEET_INCHES))).toList());
    };
  }

  @ParameterizedTest
  @MethodSource("plans")
  void aPlanWrittenAndReadIsTheSamePlan(Path file) throws IOException {
    Plan plan = read(Files.readString(file));

    assertThat(read(PlanWriter.write(plan)).slabs())
        .usingRecursiveComparison()
        .ignoringFieldsOfTypes(org.jointwright.plan.Kept.class)
        .isEqualTo(plan.slabs());
  }

  @ParameterizedTest
  @MethodSource("plans")
  void writeReadWriteGivesTheSameBytes(Path file) throws IOException {
    String written = PlanWriter.write(read(Files.readString(file)));

    assertThat(PlanWriter.write(read(written))).isEqualTo(written);
  }

  @Test
  void whatIsNotKnownSurvivesAtEveryLevel() throws IOException {
    String written = PlanWriter.write(read(Files.readString(odd())));

    for (String kept :
        List.of(
            "\"zTop\": {\"deep\": [1.50, 2e3, null, \"ü\\n\"]}",
            "\"zJob\": 1",
            "\"zSlab\": true",
            "\"zVertex\": 2",
            "\"zOpening\": 3",
            "\"zEdge\": 4",
            "\"zOpeningEdge\": 5",
            "\"zJointing\": 6",
            "\"zJoint\": 7",
            "\"zPathVertex\": 8",
            "\"zBoxOut\": 9",
            "\"zBoxOutVertex\": 10",
            "\"zFixed\": 11",
            "\"zShape\": 12",
            "\"zCircle\": 13",
            "\"zZone\": 14",
            "\"zFeature\": 15",
            "\"zZoneVertex\": 16",
            "\"zChoice\": 17",
            "\"zGiven\": 18",
            "\"zGivenVertex\": 19",
            "\"zPour\": 20")) {
      assertThat(written).contains(kept);
    }
    assertThat(PlanWriter.write(read(written))).isEqualTo(written);
  }

  @Test
  void lengthsStayAsTheyWereTyped() throws IOException {
    String written = PlanWriter.write(read(Files.readString(odd())));

    assertThat(written)
        .contains("\"thickness\": 0.3330")
        .contains("[\"24' 6 1/2\\\"\", 0]")
        .contains("\"maxSpacing\": \"2.4 m\"")
        .contains("\"depth\": \"1 1/4 in\"")
        .contains("\"diameter\": \"20 cm\"")
        .contains("{\"kind\": \"garage-door\", \"from\": \"2 ft\", \"to\": 18.50,")
        .contains("[20, \"-1 ft\"]")
        .contains("[[\"4 ft\", 0], {\"at\": [4, -5], \"via\": [3, -7],")
        .contains("\"most\": \"9 cu yd\", \"strip\": \"12'\"");
  }

  @Test
  void aLengthThatChangedIsWrittenAnew() throws IOException {
    Plan plan = read(Files.readString(odd()));

    Plan thicker =
        plan.withSlab("odd", s -> s.withThickness(org.jointwright.measure.Length.inches(5.5)));

    assertThat(PlanWriter.write(thicker)).contains("\"thickness\": \"5.5 in\"");
  }

  @Test
  void theBowOfAJointStaysAsItWasTyped() throws IOException {
    assertThat(PlanWriter.write(read(Files.readString(odd()))))
        .contains("{\"at\": [2, 3], \"via\": [4, \"3' 6\\\"\"], \"zPathVertex\": 8}");
  }

  private static Path odd() {
    return Path.of("src/test/resources/cases/odd/everything.jointwright.json");
  }
}
