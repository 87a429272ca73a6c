package org.jointwright.check.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.JointKind;
import org.junit.jupiter.api.Test;

/** P1, the user's own limits: what is poured in one go. */
class LargePoursTest {
  /** 10 ft square and 4 in thick: 57600 cubic inches. */
  private static final Optional<Volume> TEN_FEET_SQUARE = Optional.of(new Volume(57600));

  private static final Optional<Length> TEN_FEET = Optional.of(Length.feet(10));

  private static Sketch volume(double width) {
    return Sketch.rectangle(width, 120).pour(TEN_FEET_SQUARE, Optional.empty());
  }

  private static Sketch strip(double width) {
    return Sketch.rectangle(400, width).pour(Optional.empty(), TEN_FEET);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void constructionJointsPartPours() {
    Sketch parted = volume(240).joint(JointKind.CONSTRUCTION, 120, 0, 120, 120);
    assertThat(parted.findings("P1")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void contractionJointsDoNot() {
    assertThat(volume(240).joint(120, 0, 120, 120).findings("P1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.p1.tooMuch");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.measured()).isEqualTo(2 * f.limit());
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void whatTheLimitsAllowPasses() {
    assertThat(volume(120).findings("P1")).isEmpty();
    assertThat(strip(120.4).findings("P1")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreDoesNot() {
    assertThat(volume(120.1).findings("P1")).hasSize(1);
    assertThat(strip(120.6).findings("P1"))
        .extracting(Finding::key)
        .containsExactly("check.p1.tooWide");
  }

  @Test
  void withoutLimitsThereIsNothingToSay() {
    assertThat(Sketch.rectangle(2000, 2000).findings("P1")).isEmpty();
  }

  @Test
  void eachPourIsShownOnItsOwnLargestPanel() {
    Sketch two =
        Sketch.rectangle(600, 120)
            .pour(TEN_FEET_SQUARE, Optional.empty())
            .joint(60, 0, 60, 120)
            .joint(JointKind.CONSTRUCTION, 200, 0, 200, 120)
            .joint(400, 0, 400, 120)
            .joint(500, 0, 500, 120);
    assertThat(two.findings("P1"))
        .extracting(f -> f.panel().orElseThrow())
        .containsExactly("P2", "P3");
  }
}
