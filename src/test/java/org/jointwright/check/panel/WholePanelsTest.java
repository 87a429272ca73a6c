package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.check.Case;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.junit.jupiter.api.Test;

/** M8: a figure of our own; that L-shaped panels crack is in NRMCA Concrete in Practice 6. */
class WholePanelsTest {
  /** An L of two arms so wide, 100 in long. */
  private static Sketch ell(double arm) {
    return Sketch.polygon(0, 0, 100, 0, 100, arm, arm, arm, arm, 100, 0, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aRectanglePasses() {
    assertThat(Sketch.rectangle(100, 80).broken("M8")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aThinEllGivesOneFinding() {
    assertThat(ell(20).findings("M8"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.m8.hollow");
              assertThat(f.limit()).isEqualTo(0.45);
              assertThat(f.measured()).isLessThan(0.45);
            });
  }

  /** A U that fills a little more or less than the limit: 100 x 100 with a notch so deep. */
  private static Sketch notched(double deep) {
    return Sketch.polygon(
        0, 0, 100, 0, 100, 100, 90, 100, 90, 100 - deep, 10, 100 - deep, 10, 100, 0, 100);
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aPanelThatFillsJustEnoughPasses() {
    assertThat(notched(68.7).broken("M8")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aPanelThatFillsJustTooLittleBreaks() {
    assertThat(notched(68.8).findings("M8"))
        .singleElement()
        .satisfies(f -> assertThat(f.measured()).isCloseTo(0.4496, within(1e-6)));
  }

  private static Sketch withHole() {
    return Sketch.rectangle(120, 120).opening(50, 50, 70, 50, 70, 70, 50, 70);
  }

  @Test
  void aHoleThatNoTwoJointsReachBreaks() {
    assertThat(withHole().broken("M8")).containsExactly("check.m8.hole");
    assertThat(withHole().joint(0, 60, 50, 60).broken("M8")).containsExactly("check.m8.hole");
    assertThat(withHole().joint(0, 60, 50, 60).joint(70, 60, 120, 60).broken("M8")).isEmpty();
  }

  @Test
  void itIsAMust() {
    assertThat(ell(20).findings("M8")).extracting(f -> f.severity()).containsOnly(Severity.MUST);
  }
}
