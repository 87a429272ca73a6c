package org.jointwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.jointwright.check.Severity;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What may be chosen is worth choosing. */
class LayoutChoiceTest {
  private static final long SEED = 11;
  private static final int TRIED = 5;

  /** Larger slabs take seconds for each layout, square inches. */
  private static final double LARGE = 900 * 144;

  private static List<Path> files(String folder) throws IOException {
    try (Stream<Path> files = Files.list(Path.of(folder))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static Plan plan(Path file) {
    return switch (PlanReader.read(file)) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused -> throw new IllegalStateException(file + " is refused");
    };
  }

  /** Some of the open cases and samples that are not large, the same for the same seed. */
  static List<Path> some() throws IOException {
    List<Path> all = new ArrayList<>(files("src/test/resources/cases/open"));
    all.addAll(files("samples"));
    Collections.shuffle(all, new Random(SEED));
    return all.stream()
        .filter(f -> plan(f).slabs().stream().allMatch(s -> s.region().area() < LARGE))
        .filter(f -> plan(f).fixed().isEmpty())
        .limit(TRIED)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("some")
  void noChoiceIsWorseInEverythingThanAnother(Path file) {
    Plan plan = plan(file);
    String slab = plan.slabs().getFirst().id();
    List<LayoutChoice> choices = LayoutChoice.of(plan, slab);
    assertThat(choices).as("%s of seed %d", file, SEED).isNotEmpty();
    for (LayoutChoice c : choices) {
      boolean alone = c.preference() instanceof Preference.LinedUpWith;
      assertThat(choices)
          .as("better than %s in %s, seed %d", c.preference(), file, SEED)
          .noneMatch(o -> !alone && isBetterInAll(o, c));
    }
  }

  private static boolean isBetterInAll(LayoutChoice o, LayoutChoice c) {
    return o.figures().cost() < c.figures().cost() - 1
        && o.figures().meanAspect() < c.figures().meanAspect() - 0.05
        && o.figures().cv() < c.figures().cv()
        && advice(o) <= advice(c);
  }

  private static long advice(LayoutChoice choice) {
    return choice.answer().judgement().of(Severity.SHOULD).size();
  }
}
