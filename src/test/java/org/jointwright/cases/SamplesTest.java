package org.jointwright.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layout;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The samples are laid as they are meant to show. */
class SamplesTest {
  private static final Path FOLDER = Path.of("samples");
  private static final String ENDING = ".jointwright.json";
  private static final double NEAR = 1.0 / 16;

  static List<String> samples() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(ENDING))
          .map(f -> f.substring(0, f.length() - ENDING.length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Plan plan(String sample) {
    return switch (PlanReader.read(FOLDER.resolve(sample + ENDING))) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused -> throw new AssertionError(refused.problems().toString());
    };
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySampleIsLaidWithNothingToMend(String sample) {
    Plan asked = plan(sample);
    Layout laid = LayoutEngine.lay(asked);
    assertThat(LayoutEngine.refit(laid, asked)).contains(laid);
    List<Finding> findings =
        Checks.judge(asked, laid).findings().stream()
            .filter(f -> f.severity() != Severity.NOTE)
            .toList();
    assertThat(findings).isEmpty();
  }

  @Test
  void theReadmeNamesEverySample() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    assertThat(samples()).allSatisfy(s -> assertThat(readme).contains("samples/" + s + ENDING));
  }

  /** The joint in the concrete beside the new panels stands 9 ft 9 in from their corner. */
  @Test
  void theNewPanelsMeetTheOldDrivesJoint() {
    assertThat(ends(LayoutEngine.lay(plan("two-panels-in-an-old-drive"))))
        .anyMatch(p -> p.distance(new Point(110, 117)) < NEAR);
  }

  /** The garage door ends 16 ft 6 in to the right of the plan's origin, on the house's line. */
  @Test
  void aJointOfTheCurvedDriveMeetsTheGarageDoorsSide() {
    assertThat(ends(LayoutEngine.lay(plan("curved-drive"))))
        .anyMatch(p -> p.distance(new Point(16.5 * 12, 51 * 12)) < NEAR);
  }

  private static List<Point> ends(Layout layout) {
    return layout.slabs().stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .map(Joint::path)
        .flatMap(p -> Stream.of(p.start(), p.end()))
        .toList();
  }
}
