package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** M3, from an article on irregularly shaped slabs; its figures are our own. */
class InsideCornersTest {
  /** An L with its inside corner at (100, 100). */
  private static Sketch ell() {
    return Sketch.polygon(0, 0, 200, 0, 200, 100, 100, 100, 100, 200, 0, 200);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aJointFromTheCornerServesIt() {
    assertThat(ell().joint(100, 100, 0, 100).broken("M3")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void anInsideCornerWithoutAJointGivesOneFindingAtTheCorner() {
    assertThat(ell().findings("M3"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.m3.corner");
              assertThat(f.at()).isEqualTo(new Point(100, 100));
              assertThat(f.measured()).isEqualTo(270);
              assertThat(f.severity()).isEqualTo(Severity.MUST);
              assertThat(f.limit()).isEqualTo(185);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aJointHalfAnInchBesideTheCornerServesIt() {
    assertThat(ell().joint(100, 99.55, 0, 99.55).broken("M3")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aJointFartherBesideTheCornerDoesNot() {
    assertThat(ell().joint(100, 100.6, 0, 100.6).broken("M3")).hasSize(1);
  }

  /** A slab whose upper edge has an inside corner of that angle. */
  private static Sketch dented(double degrees) {
    double dip = 60 * Math.tan(Math.toRadians((degrees - 180) / 2));
    return Sketch.polygon(0, 0, 120, 0, 120, 100, 60, 100 - dip, 0, 100);
  }

  @Test
  void anAngleOfOneDegreeOverTheLimitIsForgiven() {
    assertThat(dented(185.9).broken("M3")).isEmpty();
    assertThat(dented(186.1).broken("M3")).hasSize(1);
  }

  private static Sketch stepped(double jog) {
    return Sketch.polygon(0, 0, 120, 0, 120, 100, 60, 100, 60, 100 + jog, 0, 100 + jog);
  }

  @Test
  void aStepOfAnInchAndAHalfInTheEdgeIsAJog() {
    assertThat(stepped(1.4).broken("M3")).isEmpty();
    assertThat(stepped(1.6).broken("M3")).hasSize(1);
  }

  /** A slot in the upper edge, with an inside corner on each side of its floor. */
  private static Sketch slotted(double width) {
    double right = 100 + width;
    return Sketch.polygon(0, 0, 200, 0, 200, 100, right, 100, right, 88, 100, 88, 100, 100, 0, 100);
  }

  @Test
  void twoInsideCornersWithinSixInchesAreServedByOneJoint() {
    assertThat(slotted(6.4).joint(103, 88, 103, 0).broken("M3")).isEmpty();
    assertThat(slotted(6.6).joint(103, 88, 103, 0).broken("M3")).hasSize(2);
    assertThat(slotted(6.4).broken("M3")).hasSize(2);
  }

  @Test
  void aJointThatEndsInThePanelLeavesAnInsideCornerWhereJointsMeet() {
    Sketch elbow = Sketch.rectangle(200, 200).joint(100, 0, 100, 100).joint(100, 100, 200, 100);
    assertThat(elbow.broken("M3")).containsExactly("check.m3.whereJointsMeet");
  }

  /** A square slab with a round bite of that radius out of its upper edge. */
  private static Sketch bitten(double radius, double degrees) {
    double half = radius * Math.sin(Math.toRadians(degrees / 2));
    double deep = radius * (1 - Math.cos(Math.toRadians(degrees / 2)));
    return Sketch.of(
        Vertex.at(new Point(0, 0)),
        Vertex.at(new Point(240, 0)),
        Vertex.at(new Point(240, 150)),
        Vertex.arc(new Point(120 + half, 150), new Point(120, 150 - deep)),
        Vertex.at(new Point(120 - half, 150)),
        Vertex.at(new Point(0, 150)));
  }

  @Test
  void aTightCurveOfMoreThanAHundredAndThirtyFiveDegreesNeedsAJoint() {
    assertThat(bitten(30, 135.5).broken("M3")).isEmpty();
    assertThat(bitten(30, 137).broken("M3")).containsExactly("check.m3.curve");
    assertThat(bitten(30, 137).joint(120, 150 - 30 + 30 * Math.cos(Math.toRadians(68.5)), 120, 0))
        .satisfies(s -> assertThat(s.broken("M3")).isEmpty());
  }

  @Test
  void aCurveOfFiveFeetRadiusIsNoCorner() {
    assertThat(bitten(60, 150).broken("M3")).isEmpty();
  }

  @Test
  void aCornerRoundedOffByFewInchesIsACornerStill() {
    Sketch rounded =
        Sketch.of(
            Vertex.at(new Point(0, 0)),
            Vertex.at(new Point(200, 0)),
            Vertex.at(new Point(200, 100)),
            Vertex.arc(
                new Point(104, 100), new Point(104 - 4 * Math.sqrt(0.5), 104 - 4 * Math.sqrt(0.5))),
            Vertex.at(new Point(100, 104)),
            Vertex.at(new Point(100, 200)),
            Vertex.at(new Point(0, 200)));
    assertThat(rounded.broken("M3")).containsExactly("check.m3.corner");
    assertThat(
            rounded.joint(104 - 4 * Math.sqrt(0.5), 104 - 4 * Math.sqrt(0.5), 0, 101).broken("M3"))
        .isEmpty();
  }

  @Test
  void theCornersOfARoundBoxOutAreNoInsideCorners() {
    assertThat(octagon(8).broken("M3")).isEmpty();
    // Of six sides it is not round: its corners between the joints are inside corners.
    assertThat(octagon(6).broken("M3")).isNotEmpty();
  }

  /** A box-out of so many sides amid a slab, a joint from every second of its corners. */
  private static Sketch octagon(int sides) {
    double[] xy = new double[2 * sides];
    Sketch slab = Sketch.rectangle(200, 200).post(100, 100, 8);
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * i / sides;
      xy[2 * i] = 100 + 12 * Math.cos(angle);
      xy[2 * i + 1] = 100 + 12 * Math.sin(angle);
      if (i % 2 == 0) {
        double far = 100 / Math.max(Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle)));
        slab.joint(
            xy[2 * i], xy[2 * i + 1], 100 + far * Math.cos(angle), 100 + far * Math.sin(angle));
      }
    }
    return slab.boxOut(xy);
  }
}
