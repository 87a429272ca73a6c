package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.check.Case;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** M4 by the ACPA wiki on jointing: no angle under 60 degrees. */
class AcuteAnglesTest {
  /** A joint across a slab that meets both edges at that angle. */
  private static Sketch slanting(double degrees) {
    double run = 100 / Math.tan(Math.toRadians(degrees));
    return Sketch.rectangle(240, 100).joint(120 - run / 2, 0, 120 + run / 2, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aSquareJointPasses() {
    assertThat(slanting(90).broken("M4")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aSlantingJointMakesAPointOnEachSide() {
    assertThat(slanting(45).broken("M4")).containsExactly("check.m4.tooSharp", "check.m4.tooSharp");
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void oneDegreeUnderIsForgiven() {
    assertThat(slanting(59.1).broken("M4")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreThanOneDegreeUnderIsNot() {
    assertThat(slanting(58.9).broken("M4")).hasSize(2);
  }

  private static Sketch wedge() {
    return Sketch.polygon(0, 0, 100, 0, 100, 80);
  }

  @Test
  void aSharpCornerOfTheOutlineIsExcusedUntilAJointSplitsIt() {
    assertThat(wedge().broken("M4")).isEmpty();
    assertThat(wedge().joint(0, 0, 100, 40).broken("M4")).hasSizeGreaterThan(1);
  }

  @Test
  void theTipOfACornerJointIsExcused() {
    double dx = 18 * Math.cos(Math.atan2(80, 100));
    double dy = 18 * Math.sin(Math.atan2(80, 100));
    Sketch cut = wedge().cornerJoint(18, 0, dx, dy);
    assertThat(cut.broken("M4")).isEmpty();
    assertThat(cut.broken("M5")).isEmpty();
    assertThat(cut.broken("M2")).isEmpty();
  }

  /** The chord meets the edges at 68 degrees; the arc's tangent meets one at 83, one at 53. */
  @Test
  void theAngleAtAnArcIsTakenFromItsTangent() {
    Point from = new Point(100, 0);
    Point to = new Point(140, 100);
    Path arc = Path.of(Arc.through(from, new Point(113.4, 52.6), to));
    Sketch curved =
        Sketch.rectangle(240, 100).add(Joint.of("J1", JointKind.CONTRACTION, arc, Purpose.SPACING));
    assertThat(curved.findings("M4"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.measured()).isCloseTo(53.2, within(0.1));
              assertThat(f.at()).isEqualTo(to);
            });
    assertThat(Sketch.rectangle(240, 100).joint(100, 0, 140, 100).broken("M4")).isEmpty();
  }
}
