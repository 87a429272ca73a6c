package org.jointwright.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Which slabs a hand has laid, as their history tells. */
class ByHandTest {
  private static final Joint ONE = joint("J1", 100);
  private static final Joint TWO = joint("J2", 200);

  private static Joint joint(String id, double y) {
    return Joint.of(
        id,
        JointKind.CONTRACTION,
        Path.straight(new Point(0, y), new Point(120, y)),
        Purpose.SPACING);
  }

  private static Slab slab(String id, double x) {
    Outline outline =
        Outline.of(
            List.of(
                new Point(x, 0),
                new Point(x + 120, 0),
                new Point(x + 120, 300),
                new Point(x, 300)));
    return Slab.of(id, outline);
  }

  private static History laid() {
    Slab pad = slab("pad", 0).withLaid(List.of(ONE, TWO), List.of());
    return History.begun(Plan.EMPTY.withSlabs(List.of(pad)));
  }

  private static History moved() {
    Path aside = Path.straight(new Point(0, 90), new Point(120, 90));
    return laid().done(new JointEdit.Move("pad", "J1", aside));
  }

  private static void assertStands(History history) {
    assertThat(ByHand.of(history).standing()).containsExactly("pad");
    assertThat(ByHand.of(history).following()).isEmpty();
  }

  private static void assertNone(History history) {
    assertThat(ByHand.of(history)).isEqualTo(ByHand.NONE);
  }

  @Test
  void whatWasLaidAndNotTouchedIsNot() {
    assertNone(laid());
    assertNone(laid().done(new SlabEdit.SetThickness("pad", Length.inches(6))));
    assertNone(laid().done(new JointEdit.Lock("pad", "J1", true)));
  }

  @Test
  void aJointMovedAddedOrTakenOutIsAHand() {
    assertStands(moved());
    assertStands(laid().done(new JointEdit.Add("pad", joint("J3", 250))));
    assertStands(laid().done(new JointEdit.Remove("pad", "J1")));
    assertStands(laid().done(new JointEdit.SetKind("pad", "J1", JointKind.CONSTRUCTION)));
  }

  @Test
  void soIsAFixThatLocksOneOrLeavesOneOut() {
    Joint aside = joint("J1", 110).withLocked(true);
    assertStands(laid().done(new JointEdit.Lay("pad", List.of(aside, TWO), List.of())));
    assertStands(laid().done(new JointEdit.Lay("pad", List.of(TWO), List.of())));
  }

  @Test
  void aMendOfFreeJointsIsByHandButNotOneThatChangesNoCut() {
    List<Joint> moved = List.of(joint("J1", 110), TWO);
    assertStands(laid().done(new JointEdit.Mend("pad", moved, List.of())));
    assertNone(laid().done(new JointEdit.Mend("pad", List.of(ONE, TWO), List.of())));
  }

  @Test
  void allLaidAnewIsNoneAnyMore() {
    History moved = moved();
    List<Joint> anew = List.of(joint("J1", 75), joint("J2", 150), joint("J3", 225));
    assertNone(moved.done(new JointEdit.Lay("pad", anew, List.of())));
    Joint locked = moved.now().slabs().getFirst().lockedJoints().getFirst();
    assertNone(moved.done(new JointEdit.Lay("pad", List.of(locked), List.of())));
  }

  @Test
  void whoUnlocksTheLastOneGivesThemBack() {
    assertNone(moved().done(new JointEdit.Lock("pad", "J1", false)));
    History two = moved().done(new JointEdit.Lock("pad", "J2", true));
    assertStands(two.done(new JointEdit.Lock("pad", "J1", false)));
  }

  @Test
  void itStandsThroughWhatLeavesItsShape() {
    assertStands(moved().done(new SlabEdit.SetThickness("pad", Length.inches(6))));
    assertStands(moved().done(new SlabEdit.Add(slab("walk", 120))));
    assertStands(
        moved()
            .done(
                new SlabEdit.SetEdge(
                    new Ref("pad", Ref.OUTLINE, 0), EdgeSetting.against(Against.BUILDING))));
    History named = moved().done(new SlabEdit.Rename("pad", "patio"));
    assertThat(ByHand.of(named).standing()).containsExactly("patio");
  }

  @Test
  void itGoesAlongWithAnotherShape() {
    History wider =
        moved().done(new SlabEdit.MoveCorner(new Ref("pad", Ref.OUTLINE, 1), new Point(130, 0)));
    assertThat(ByHand.of(wider).following()).containsExactly("pad");
    assertThat(ByHand.of(wider).standing()).isEmpty();
    History then = wider.done(new SlabEdit.SetThickness("pad", Length.inches(6)));
    assertStands(then);
    ByHand unlaid = ByHand.of(then).after(ByHand.of(wider), s -> true);
    assertThat(unlaid.following()).as("before the joints have gone along").containsExactly("pad");
    assertThat(unlaid.standing()).isEmpty();
  }

  /** Else the joint that was taken out would come back with the pattern that it was laid in. */
  @Test
  void aSlabThatKeepsItsShapeStandsAlsoWhileAnotherIsStillLaid() {
    ByHand of = ByHand.of(moved());
    assertThat(of.standing()).containsExactly("pad");
    assertThat(of.after(ByHand.NONE, s -> false).standing()).containsExactly("pad");
    assertThat(of.after(ByHand.NONE, s -> false).following()).isEmpty();
    assertThat(of.after(ByHand.NONE, s -> true).following()).containsExactly("pad");
  }

  @Test
  void undoingTheHandUndoesIt() {
    assertNone(moved().undone());
  }

  @Test
  void whatAFileHasLockedIsOfAHand() {
    Slab pad = slab("pad", 0).withLaid(List.of(ONE.withLocked(true), TWO), List.of());
    History opened = History.opened(Plan.EMPTY.withSlabs(List.of(pad)));
    assertStands(opened.done(new SlabEdit.SetThickness("pad", Length.inches(6))));
  }
}
