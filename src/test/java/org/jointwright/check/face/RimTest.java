package org.jointwright.check.face;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.jointwright.check.Sketch;
import org.jointwright.joint.Layouts;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Inside corners close together may be served by one joint; the figure is this program’s own. */
class RimTest {
  @Test
  void twoCornersOfANarrowNotchAreServedByAJointFromEither() {
    assertThat(served(notch(98, 102).joint(98, 80, 98, 0))).isEqualTo(both(98, 102));
    assertThat(served(notch(98, 102).joint(102, 80, 102, 0))).isEqualTo(both(98, 102));
    assertThat(served(notch(98, 102).joint(100, 80, 100, 0))).isEqualTo(both(98, 102));
  }

  @Test
  void sixInchesAndAToleranceTheyAreNotTogether() {
    assertThat(served(notch(96.8, 103.2).joint(100, 80, 100, 0))).isEqualTo(both(96.8, 103.2));
    assertThat(served(notch(96.7, 103.3).joint(100, 80, 100, 0))).isEmpty();
  }

  @Test
  void aJointThatEndsBesideThemServesNeither() {
    assertThat(served(notch(98, 102).joint(50, 120, 50, 0))).isEmpty();
    // Near in space, but up the side of the notch and not between them.
    assertThat(served(notch(98, 102).joint(98, 82, 0, 82))).isEmpty();
    assertThat(served(notch(98, 102).joint(102, 82, 200, 82))).isEmpty();
  }

  @Test
  void aJointHalfAnInchBeyondIsTakenForOneAtTheCorner() {
    assertThat(served(notch(98, 102).joint(98, 80.4, 0, 80.4))).isEqualTo(both(98, 102));
    assertThat(served(notch(98, 102).joint(102, 80.4, 200, 80.4))).isEqualTo(both(98, 102));
    assertThat(served(notch(98, 102).joint(98, 80.7, 0, 80.7))).isEmpty();
    assertThat(served(notch(98, 102).joint(102, 80.7, 200, 80.7))).isEmpty();
  }

  @Test
  void cornersOnEitherSideOfAFingerAreNoNeighbours() {
    // Four inches apart as the crow flies, seven feet along the edge.
    Sketch finger =
        Sketch.polygon(
            0, 0, 200, 0, 200, 120, 120, 120, 120, 80, 102, 80, 102, 120, 98, 120, 98, 80, 80, 80,
            80, 120, 0, 120);
    assertThat(served(finger.joint(98, 80, 98, 0))).isEmpty();
  }

  @Test
  void cornersOfAnOpeningAreServedToo() {
    Sketch slot =
        Sketch.rectangle(200, 120)
            .opening(98, 40, 102, 40, 102, 80, 98, 80)
            .joint(98, 40, 98, 0)
            .joint(98, 60, 0, 60);
    assertThat(served(slot)).containsExactlyInAnyOrder(new Point(98, 40), new Point(102, 40));
  }

  @Test
  void cornersThatStandOutNeedNone() {
    Sketch tooth = Sketch.polygon(0, 0, 200, 0, 200, 80, 102, 80, 102, 120, 98, 120, 98, 80, 0, 80);
    assertThat(served(tooth.joint(100, 120, 100, 0))).isEmpty();
  }

  @Test
  void jointsEndWhereTheyMeetTheRim() {
    Rim rim = rim(notch(98, 102).joint(98, 80, 98, 0));
    assertThat(rim.isJointEnd(new Point(98, 80))).isTrue();
    assertThat(rim.isJointEnd(new Point(102, 80))).isFalse();
  }

  private static Set<Point> both(double left, double right) {
    return Set.of(new Point(left, 80), new Point(right, 80));
  }

  /** A slab with a notch from above. */
  private static Sketch notch(double left, double right) {
    return Sketch.polygon(
        0, 0, 200, 0, 200, 120, right, 120, right, 80, left, 80, left, 120, 0, 120);
  }

  private static Set<Point> served(Sketch sketch) {
    return rim(sketch).servedTogether();
  }

  private static Rim rim(Sketch sketch) {
    return Rim.of(
        new Faces(Set.of(), Set.of()).of(Layouts.of(sketch.plan()).slabs().getFirst().panels()));
  }
}
