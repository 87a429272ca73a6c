package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** M6 by a highway engineering handbook: joints end at joints, obstructions and edges. */
class AnchorageTest {
  private static Sketch slab() {
    return Sketch.rectangle(200, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void jointsThatEndOnEdgesAndOnEachOtherPass() {
    assertThat(slab().joint(100, 0, 100, 100).joint(0, 50, 100, 50).broken("M6")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aJointThatStopsShortGivesOneFindingAtItsEnd() {
    assertThat(slab().joint(100, 0, 100, 90).findings("M6"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.m6.loose");
              assertThat(f.at()).isEqualTo(new Point(100, 90));
              assertThat(f.measured()).isEqualTo(10);
              assertThat(f.joint()).contains("J1");
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void anEndHalfAnInchShortIsForgiven() {
    assertThat(slab().joint(100, 0, 100, 99.5).broken("M6")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void anEndFartherShortIsNot() {
    assertThat(slab().joint(100, 0, 100, 99.4).broken("M6")).containsExactly("check.m6.loose");
  }

  @Test
  void aJointOffTheSlabBreaks() {
    assertThat(slab().joint(100, 0, 100, 100.5).broken("M6")).isEmpty();
    assertThat(slab().joint(100, 0, 100, 106).broken("M6"))
        .containsExactlyInAnyOrder("check.m6.outside", "check.m6.loose");
  }

  @Test
  void aJointThroughAnOpeningBreaks() {
    assertThat(
            slab().opening(80, 30, 120, 30, 120, 60, 80, 60).joint(100, 0, 100, 100).broken("M6"))
        .containsExactly("check.m6.outside");
  }

  @Test
  void jointsOnEachOtherBreakUnlessTheyOnlyMeetOrCross() {
    assertThat(slab().joint(100, 0, 100, 100).joint(100.3, 0, 100.3, 100).broken("M6"))
        .containsExactly("check.m6.onOther");
    assertThat(slab().joint(100, 0, 100, 50).joint(100, 50, 100, 100).broken("M6")).isEmpty();
  }

  @Test
  void aJointAlongAnEdgeBreaksButFillerDoesNot() {
    assertThat(slab().joint(0, 0, 200, 0).broken("M6")).containsExactly("check.m6.alongEdge");
    assertThat(slab().filler(0, 0, 200, 0).broken("M6")).isEmpty();
  }

  @Test
  void aBentJointBreaksButAnArcAndBentFillerDoNot() {
    assertThat(slab().joint(100, 0, 110, 50, 100, 100).broken("M6"))
        .containsExactly("check.m6.bent");
    assertThat(slab().filler(100, 0, 110, 50, 100, 100).broken("M6")).isEmpty();
    Path arc = Path.of(Arc.through(new Point(100, 0), new Point(110, 50), new Point(100, 100)));
    assertThat(slab().add(Joint.of("J1", JointKind.CONTRACTION, arc, Purpose.SPACING)).broken("M6"))
        .isEmpty();
  }
}
