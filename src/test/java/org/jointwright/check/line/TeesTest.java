package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.plan.JointKind;
import org.junit.jupiter.api.Test;

/** S1 by TM 5-809-12: each joint goes on from edge to edge. */
class TeesTest {
  private static Sketch slab() {
    return Sketch.rectangle(200, 200).joint(100, 0, 100, 200);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void jointsThatCrossAreNoTee() {
    assertThat(slab().joint(0, 100, 200, 100).findings("S1")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aJointThatEndsOnAnotherIsATee() {
    assertThat(slab().joint(0, 100, 100, 100).findings("S1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s1.tee");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.joint()).contains("J2");
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aJointThatGoesOnWithinAnInchIsNoTee() {
    assertThat(slab().joint(0, 100, 100, 100).joint(100, 100.9, 200, 100.9).findings("S1"))
        .isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aJointThatGoesOnFartherAsideMakesTwoTees() {
    assertThat(slab().joint(0, 100, 100, 100).joint(100, 101.1, 200, 101.1).findings("S1"))
        .hasSize(2);
  }

  @Test
  void aJointThatEndsAtAFlatAngleIsOneTee() {
    // Within 20 degrees of the line it ends on: it might pass for a piece of it.
    assertThat(slab().joint(70, 0, 100, 100).findings("S1")).hasSize(1);
  }

  @Test
  void aThroughJointInTwoPiecesHidesNoTee() {
    Sketch pieces =
        Sketch.rectangle(200, 200)
            .joint(100, 0, 100, 100)
            .joint(100, 100, 100, 200)
            .joint(0, 100, 100, 100);
    assertThat(pieces.findings("S1")).hasSize(1);
  }

  @Test
  void threeJointsThatMeetWithNoneRunningThroughAreAY() {
    Sketch y =
        Sketch.rectangle(200, 200)
            .joint(100, 100, 100, 0)
            .joint(100, 100, 0, 160)
            .joint(100, 100, 200, 160);
    assertThat(y.findings("S1")).extracting(Finding::key).containsExactly("check.s1.y");
  }

  @Test
  void anEndAtAConstructionJointIsNoTee() {
    Sketch pours =
        Sketch.rectangle(200, 200)
            .joint(JointKind.CONSTRUCTION, 100, 0, 100, 200)
            .joint(0, 100, 100, 100);
    assertThat(pours.findings("S1")).isEmpty();
  }

  @Test
  void aMeetingOfThreeOfWhichNoneRunsThroughCountsHalf() {
    Sketch star =
        Sketch.rectangle(200, 200)
            .joint(100, 100, 100, 0)
            .joint(100, 100, 0, 160)
            .joint(100, 100, 200, 160);
    assertThat(star.findings("S1"))
        .extracting(Finding::key, Finding::measured)
        .containsOnly(org.assertj.core.groups.Tuple.tuple("check.s1.y", 0.5));
    assertThat(slab().joint(0, 100, 100, 100).findings("S1"))
        .extracting(Finding::measured)
        .containsExactly(1.0);
  }
}
