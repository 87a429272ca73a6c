package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.app.Answer;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.SplitEdit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What a hand has laid stays where it is, whatever is done to the plan later. */
class LaidByHandTest {
  private static Slab slab(String id, double x, double wide, double high) {
    return Slab.of(
        id,
        Outline.of(
            List.of(
                new Point(x, 0),
                new Point(x + wide, 0),
                new Point(x + wide, high),
                new Point(x, high))));
  }

  private static Desk laid(Desk desk) {
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer =
        wish.lay()
            ? Answer.laid(wish.plan(), wish.before(), wish.hand(), () -> true).orElseThrow()
            : Answer.asItStands(wish.plan());
    return desk.answered(
        new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement()));
  }

  private static Set<Path> cuts(Desk desk) {
    return joints(desk, JointKind.CONTRACTION);
  }

  private static Set<Path> joints(Desk desk, JointKind kind) {
    return desk.plan().slab("drive").orElseThrow().joints().stream()
        .filter(j -> j.kind() == kind)
        .map(Joint::path)
        .collect(Collectors.toSet());
  }

  /** A drive of 20 by 30 ft whose first level joint was pushed up by a foot. */
  private static Desk pushed() {
    Desk desk = laid(Desk.begun(Plan.EMPTY.withSlabs(List.of(slab("drive", 0, 240, 360)))));
    Joint level = level(desk);
    Point up = new Point(0, 12);
    Path to = Path.straight(level.path().start().plus(up), level.path().end().plus(up));
    return laid(desk.editedOnly(new JointEdit.Move("drive", level.id(), to)));
  }

  @Test
  void anotherThicknessLeavesIt() {
    Desk desk = pushed();
    for (double inches : new double[] {6, 3.5}) {
      Desk after = laid(desk.edited(new SlabEdit.SetThickness("drive", Length.inches(inches))));
      assertThat(cuts(after)).isEqualTo(cuts(desk));
    }
    Desk thin = laid(desk.edited(new SlabEdit.SetThickness("drive", Length.inches(3))));
    assertThat(thin.laying().laid().orElseThrow().findings())
        .as("what no longer fits is found")
        .anyMatch(f -> f.rule().equals("M1"));
  }

  @Test
  void whatASideIsAgainstLeavesItAndSetsItsFiller() {
    Desk desk = pushed();
    Ref top = new Ref("drive", Ref.OUTLINE, 2);
    Desk after =
        laid(desk.edited(new SlabEdit.SetEdge(top, EdgeSetting.against(Against.BUILDING))));
    assertThat(cuts(after)).isEqualTo(cuts(desk));
    assertThat(joints(after, JointKind.ISOLATION)).hasSize(1);
    Desk open = laid(after.edited(new SlabEdit.SetEdge(top, EdgeSetting.OPEN)));
    assertThat(cuts(open)).isEqualTo(cuts(desk));
    assertThat(joints(open, JointKind.ISOLATION)).isEmpty();
  }

  @Test
  void aNewSlabBesideLinesUpWithIt() {
    Desk desk = pushed();
    Desk after = laid(desk.edited(new SlabEdit.Add(slab("walk", 240, 48, 360))));
    assertThat(cuts(after)).isEqualTo(cuts(desk));
    assertThat(joints(after, JointKind.CONSTRUCTION)).as("where they meet").isNotEmpty();
    assertThat(after.plan().slab("walk").orElseThrow().joints()).isNotEmpty();
  }

  @Test
  void aCornerThatMovesTakesItAlong() {
    Desk desk = pushed();
    Desk wider = desk;
    for (int corner : new int[] {1, 2}) {
      Point to = new Point(252, corner == 1 ? 0 : 360);
      wider =
          laid(wider.edited(new SlabEdit.MoveCorner(new Ref("drive", Ref.OUTLINE, corner), to)));
    }
    assertThat(wider.plan().slab("drive").orElseThrow().lockedJoints()).hasSize(1);
    assertThat(cuts(wider)).hasSameSizeAs(cuts(desk));
  }

  /** Nobody waits for the judgement between one edit and the next. */
  @Test
  void aJointTakenOutStaysOutThoughTheShapeChangesBeforeThatIsJudged() {
    Desk desk = laid(Desk.begun(Plan.EMPTY.withSlabs(List.of(slab("drive", 0, 240, 360)))));
    int all = cuts(desk).size();
    Desk out = desk.editedOnly(new JointEdit.Remove("drive", level(desk).id()));
    Desk waited = widened(laid(out), 240, 246);
    assertThat(cuts(laid(waited))).as("judged before").hasSize(all - 1);
    Desk once = widened(out, 240, 246);
    assertThat(cuts(laid(once))).isEqualTo(cuts(laid(waited)));
    assertThat(cuts(laid(widened(once, 246, 252)))).as("and changed once more").hasSize(all - 1);
  }

  @Test
  void aJointTakenOutBeforeAnotherShapeIsLaidStaysOutToo() {
    Desk desk = laid(Desk.begun(Plan.EMPTY.withSlabs(List.of(slab("drive", 0, 240, 360)))));
    int all = cuts(desk).size();
    Desk wider = widened(desk, 240, 246);
    Desk out = laid(wider.editedOnly(new JointEdit.Remove("drive", level(desk).id())));
    assertThat(cuts(out)).hasSize(all - 1);
  }

  /** Both right corners moved, as by a side that is pushed. */
  private static Desk widened(Desk desk, double from, double to) {
    Desk wider = desk.edited(new SlabEdit.MoveCorner(corner(1), new Point(to, 0)));
    assertThat(desk.plan().slabs().getFirst().outline().vertices().get(1).at().x()).isEqualTo(from);
    return wider.goingOn(new SlabEdit.MoveCorner(corner(2), new Point(to, 360)));
  }

  private static Ref corner(int i) {
    return new Ref("drive", Ref.OUTLINE, i);
  }

  private static Joint level(Desk desk) {
    return desk.plan().slabs().getFirst().joints().stream()
        .filter(j -> Math.abs(j.path().start().y() - j.path().end().y()) < 1)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void jointsThatNobodyTouchedAreStillLaidAnew() {
    Desk desk = laid(Desk.begun(Plan.EMPTY.withSlabs(List.of(slab("drive", 0, 240, 360)))));
    Desk after = laid(desk.edited(new SlabEdit.SetThickness("drive", Length.inches(6))));
    assertThat(cuts(after)).isNotEqualTo(cuts(desk));
  }

  /** Fixes that move all lines of a slab to whole marks lock none of them. */
  @Test
  void aMendOfFreeJointsOutlivesASplitAndARoundedCornerBesideIt() {
    Plan both =
        Plan.EMPTY.withSlabs(List.of(slab("drive", 0, 240, 360), slab("patio", 240, 240, 360)));
    Desk desk = laid(Desk.begun(both));
    Slab drive = desk.plan().slab("drive").orElseThrow();
    List<Joint> mended =
        drive.joints().stream()
            .map(
                j ->
                    j.kind() == JointKind.CONTRACTION
                            && Math.abs(j.path().start().y() - j.path().end().y()) < 1
                        ? j.withPath(
                            Path.straight(
                                j.path().start().plus(new Point(0, 3)),
                                j.path().end().plus(new Point(0, 3))))
                        : j)
            .toList();
    Desk mend = laid(desk.editedOnly(new JointEdit.Mend("drive", mended, drive.boxOuts())));
    assertThat(mend.plan().slab("drive").orElseThrow().lockedJoints()).isEmpty();
    assertThat(cuts(mend)).isNotEqualTo(cuts(desk));
    Desk split =
        laid(mend.edited(new SplitEdit.Split("patio", new Point(360, 0), new Point(360, 360))));
    assertThat(split.plan().slabs()).hasSize(3);
    assertThat(cuts(split)).isEqualTo(cuts(mend));
    Desk rounded =
        laid(mend.edited(new SlabEdit.RoundCorner(new Ref("patio", Ref.OUTLINE, 1), 24)));
    assertThat(cuts(rounded)).isEqualTo(cuts(mend));
  }

  @Test
  void unlockingMovesNothing() {
    Desk desk = pushed();
    String locked = desk.plan().slabs().getFirst().lockedJoints().getFirst().id();
    Desk free = laid(desk.editedOnly(new JointEdit.Lock("drive", locked, false)));
    assertThat(cuts(free)).isEqualTo(cuts(desk));
    Desk next = laid(free.edited(new SlabEdit.SetThickness("drive", Length.inches(6))));
    assertThat(cuts(next)).as("free to go at the next laying").isNotEqualTo(cuts(desk));
  }
}
