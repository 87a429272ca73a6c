package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.practice.Flag;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** M9: what the plan's user locked is its own source. */
class LockedJointsTest {
  private static final Plan ASKED =
      Sketch.rectangle(200, 100)
          .add(
              Joint.of(
                      "J1",
                      JointKind.CONTRACTION,
                      Path.straight(new Point(100, 0), new Point(100, 100)),
                      Purpose.SPACING)
                  .withLocked(true))
          .plan();

  private static Sketch laid() {
    return Sketch.rectangle(200, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aLockedJointThatIsThereInTwoPiecesPasses() {
    Sketch pieces = laid().joint(100, 100, 100, 40).joint(100, 40, 100, 0);
    assertThat(pieces.findings("M9", ASKED)).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aLockedJointThatIsGoneGivesOneFinding() {
    assertThat(laid().findings("M9", ASKED))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.m9.missing");
              assertThat(f.measured()).isEqualTo(100);
              assertThat(f.joint()).contains("J1");
              assertThat(f.sources().getFirst().flag()).isEqualTo(Flag.PLAN);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aLockedJointMovedByHalfAnInchIsForgiven() {
    assertThat(laid().joint(100.5, 0, 100.5, 100).findings("M9", ASKED)).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aLockedJointMovedFartherIsMissing() {
    assertThat(laid().joint(100.6, 0, 100.6, 100).findings("M9", ASKED)).hasSize(1);
  }

  @Test
  void anotherKindOfJointInItsPlaceDoesNotCount() {
    assertThat(laid().joint(JointKind.CONSTRUCTION, 100, 0, 100, 100).findings("M9", ASKED))
        .hasSize(1);
  }

  @Test
  void aJointThatIsNotLockedMayGo() {
    assertThat(laid().findings("M9", laid().joint(100, 0, 100, 100).plan())).isEmpty();
  }

  @Test
  void aGapInItIsForgivenUpToAnInch() {
    // Joints are taken to reach 9/16 in beyond their ends.
    assertThat(laid().joint(100, 0, 100, 50).joint(100, 52, 100, 100).findings("M9", ASKED))
        .isEmpty();
    assertThat(laid().joint(100, 0, 100, 50).joint(100, 53, 100, 100).findings("M9", ASKED))
        .hasSize(1);
  }
}
