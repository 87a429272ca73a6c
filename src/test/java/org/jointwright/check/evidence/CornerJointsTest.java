package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A joint cuts the tip off a sharp corner, 12 to 24 in from it: common practice. */
class CornerJointsTest {
  /** A corner of 45 degrees at the origin, a joint square to its middle at so much along. */
  private static Sketch sharp(double along) {
    return corner().cornerJoint(along, 0, s(along), s(along));
  }

  private static Sketch corner() {
    return Sketch.polygon(0, 0, 200, 0, 200, 200);
  }

  private static double s(double along) {
    return along * Math.sqrt(0.5);
  }

  private static CornerJoints of(Sketch sketch) {
    return Evidence.of(sketch).corners();
  }

  @Test
  void atOneToTwoFeetItCutsATipOff() {
    for (double along : new double[] {11.6, 18, 24.4}) {
      assertThat(of(sharp(along)).joints()).containsExactly("J1");
      assertThat(of(sharp(along)).tips()).containsExactly("P1");
    }
    assertThat(of(sharp(11.4)).joints()).isEmpty();
    assertThat(of(sharp(24.6)).joints()).isEmpty();
  }

  @Test
  void bothEndsCountAndEitherWayRound() {
    assertThat(of(corner().cornerJoint(s(18), s(18), 18, 0)).joints()).containsExactly("J1");
    assertThat(of(corner().cornerJoint(18, 0, s(30), s(30))).joints()).isEmpty();
    assertThat(of(corner().cornerJoint(18, 0, s(8), s(8))).joints()).isEmpty();
    assertThat(of(corner().cornerJoint(18, 0, s(8), 0)).joints()).isEmpty();
  }

  @Test
  void onlyWhatIsToBeAndIsOneStraightContractionJointIsOne() {
    assertThat(of(corner().joint(18, 0, s(18), s(18))).joints()).isEmpty();
    Path line = Path.straight(new Point(18, 0), new Point(s(18), s(18)));
    assertThat(
            of(corner().add(Joint.of("J1", JointKind.CONSTRUCTION, line, Purpose.CORNER))).joints())
        .isEmpty();
    assertThat(of(corner().cornerJoint(18, 0, 20, 8, s(18), s(18))).joints()).isEmpty();
  }

  @Test
  void whereTheUserMarkedItAnyCornerWillDo() {
    Sketch square = Sketch.rectangle(200, 200).cornerJoint(18, 0, 0, 18);
    assertThat(of(square).joints()).containsExactly("J1");
    // Laid without the mark the same corner is square, not sharp.
    assertThat(Evidence.of(Sketch.rectangle(200, 200), square).corners().joints()).isEmpty();
    Sketch asked = Sketch.rectangle(200, 200).cornerJoint(0, 18.3, 18.3, 0);
    Sketch plain = Sketch.rectangle(200, 200).joint(18, 0, 0, 18);
    assertThat(Evidence.of(asked, plain).corners().joints()).containsExactly("J1");
    // At the marked corner but elsewhere: it is another joint.
    Sketch farther = Sketch.rectangle(200, 200).joint(22, 0, 0, 22);
    assertThat(Evidence.of(asked, farther).corners().joints()).isEmpty();
    Sketch oneEnd = Sketch.rectangle(200, 200).joint(18, 0, 0, 22);
    assertThat(Evidence.of(asked, oneEnd).corners().joints()).isEmpty();
    Sketch other = Sketch.rectangle(200, 200).cornerJoint(182, 0, 200, 18);
    assertThat(Evidence.of(other, plain).corners().joints()).isEmpty();
    assertThat(Evidence.of(other, square).corners().joints()).isEmpty();
  }

  @Test
  void aPanelThatIsMoreThanItsTriangleIsNoTip() {
    // The other corner joint is missing: what lies behind it is the slab.
    assertThat(of(sharp(18)).tips()).doesNotContain("P2");
    Sketch two =
        Sketch.polygon(0, 0, 200, 0, 200, 200)
            .cornerJoint(18, 0, s(18), s(18))
            .joint(100, 0, 100, 100);
    assertThat(of(two).tips()).containsExactly("P1");
  }
}
