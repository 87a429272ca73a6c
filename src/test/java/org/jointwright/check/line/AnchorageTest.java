package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Case;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
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

  @Test
  void twoArcsThatCloseAreACircleAndNothingElseOfTwoPiecesIsOneLine() {
    Point left = new Point(60, 50);
    Point right = new Point(140, 50);
    Edge over = Arc.through(right, new Point(100, 90), left);
    Edge under = Arc.through(left, new Point(100, 10), right);
    assertThat(slab().add(joint(over, under)).broken("M6")).doesNotContain("check.m6.bent");
    assertThat(slab().add(joint(over, new Segment(left, right))).broken("M6"))
        .contains("check.m6.bent");
    Edge on = Arc.through(left, new Point(40, 70), new Point(20, 50));
    assertThat(slab().add(joint(over, on)).broken("M6")).contains("check.m6.bent");
  }

  private static Joint joint(Edge... edges) {
    return Joint.of("J1", JointKind.CONTRACTION, new Path(List.of(edges)), Purpose.SPACING);
  }

  @Test
  void fillerMayRunThroughABoxOutAndAJointMayNot() {
    Sketch boxed = slab().post(100, 50, 8).bareBoxOut(85, 35, 115, 35, 115, 65, 85, 65);
    assertThat(boxed.joint(100, 0, 100, 100).broken("M6")).containsExactly("check.m6.outside");
    Sketch filled = slab().post(100, 50, 8).bareBoxOut(85, 35, 115, 35, 115, 65, 85, 65);
    assertThat(filled.filler(100, 0, 100, 100).broken("M6")).isEmpty();
  }

  @Test
  void aFormedJointMayRunAlongTheNextSlabAndNotAnInchOffIt() {
    assertThat(beside(200, JointKind.CONSTRUCTION).broken("M6")).isEmpty();
    assertThat(beside(200, JointKind.CONTRACTION).broken("M6"))
        .containsExactly("check.m6.alongEdge");
    assertThat(beside(201.2, JointKind.CONSTRUCTION).broken("M6"))
        .containsExactly("check.m6.alongEdge");
  }

  private static Sketch beside(double x, JointKind kind) {
    return slab()
        .beside("next", Sketch.polygon(x, 0, x + 100, 0, x + 100, 100, x, 100))
        .joint(kind, 200, 0, 200, 100);
  }

  @Test
  void jointsMayLieOnEachOtherForSixInches() {
    assertThat(overlapping(5.9)).isEmpty();
    assertThat(overlapping(6.2)).containsExactly("check.m6.onOther");
  }

  private static List<String> overlapping(double inches) {
    return slab().joint(100, 0, 100, 50 + inches).joint(100, 50, 100, 100).broken("M6");
  }

  @Test
  void aShortJointThatLiesOnAnotherIsFoundAllTheSame() {
    // 4 in, of which all lie on the other, or seven tenths.
    assertThat(slab().joint(100, 0, 100, 100).joint(100, 50, 100, 54).broken("M6"))
        .containsExactly("check.m6.onOther");
    assertThat(slab().joint(100, 0, 100, 52.8).joint(100, 50, 100, 54).broken("M6"))
        .doesNotContain("check.m6.onOther");
    // An inch at most may be a slip of the hand.
    assertThat(slab().joint(100, 0, 100, 100).joint(100, 50, 100, 50.9).broken("M6"))
        .doesNotContain("check.m6.onOther");
    assertThat(slab().joint(100, 0, 100, 100).joint(100, 50, 100, 51.2).broken("M6"))
        .contains("check.m6.onOther");
  }
}
