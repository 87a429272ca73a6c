package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Case;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.evidence.Judged;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Against;
import org.jointwright.plan.JointKind;
import org.junit.jupiter.api.Test;

/** S2, this program's own figure: a joint without which nothing breaks is one too many. */
class SpareJointsTest {
  /** Joints may stand 10 ft apart here, with the tolerance 120 1/2 in. */
  private static Sketch halved(double length) {
    return Sketch.rectangle(length, 81).joint(length / 2, 0, length / 2, 81);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aJointThatTheSlabNeedsIsNotSpare() {
    assertThat(halved(200).findings("S2")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aJointThatBuysNothingIsSpare() {
    assertThat(halved(110).findings("S2"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s2.spare");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.joint()).contains("J1");
              assertThat(f.measured()).isEqualTo(81);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aSlabAHairLongerThanThePanelsMayBeNeedsIt() {
    assertThat(halved(120.6).findings("S2")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aSlabThatPassesAsOnePanelDoesNot() {
    assertThat(halved(120.4).findings("S2")).hasSize(1);
  }

  /** A yard of 10,000 panels would be cut anew for each of its joints: there is an end to that. */
  @Test
  void noMorePanelsAreCutAnewThanMayBe() {
    Layout layout = Layouts.of(halved(110).plan());
    Judged slab = new Judged(layout.plan(), layout, layout.slabs().getFirst());
    assertThat(new SpareJoints(List.of(), 2).findings(slab)).hasSize(1);
    assertThat(new SpareJoints(List.of(), 1).findings(slab)).isEmpty();
  }

  @Test
  void whatTheUserLockedIsWanted() {
    assertThat(halved(110).locked().findings("S2")).isEmpty();
  }

  @Test
  void aJointThatAnotherEndsOnIsNeededByIt() {
    Sketch tee = Sketch.rectangle(110, 81).joint(55, 0, 55, 81).joint(0, 40.5, 55, 40.5);
    assertThat(tee.findings("S2")).extracting(f -> f.joint().orElseThrow()).containsExactly("J2");
  }

  @Test
  void whereTheSlabBreaksARuleThatComesFirst() {
    assertThat(halved(110).joint(12, 0, 12, 81).broken("M5")).isNotEmpty();
    assertThat(halved(110).joint(12, 0, 12, 81).findings("S2")).isEmpty();
  }

  @Test
  void aPourMayEndThereSoAFormedJointIsNotSpare() {
    Sketch formed = Sketch.rectangle(110, 81).joint(JointKind.CONSTRUCTION, 55, 0, 55, 81);
    assertThat(formed.findings("S2")).isEmpty();
  }

  @Test
  void aCutTipIsNotSpare() {
    assertThat(Sketch.rectangle(110, 81).cornerJoint(0, 40, 40, 0).findings("S2")).isEmpty();
  }

  @Test
  void aNoteIsNoRuleThatBreaks() {
    Sketch noted = halved(110).floats(0, Against.BUILDING);
    assertThat(noted.findings("M7")).hasSize(1);
    assertThat(noted.findings("S2")).hasSize(1);
  }

  @Test
  void aJointThatTwoOthersGoOnFromIsNotSpareByWhatItsTeesWouldCost() {
    // Without the short piece in the middle the lines on either side of it end at tees.
    Sketch middle =
        Sketch.rectangle(110, 110)
            .joint(45, 0, 45, 110)
            .joint(65, 0, 65, 110)
            .joint(0, 55, 45, 55)
            .joint(45, 55, 65, 55)
            .joint(65, 55, 110, 55);
    assertThat(middle.findings("S2")).extracting(f -> f.joint().orElseThrow()).doesNotContain("J4");
  }
}
