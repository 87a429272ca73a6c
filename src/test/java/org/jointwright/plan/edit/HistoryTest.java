package org.jointwright.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Job;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.plan.Use;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class HistoryTest {
  private static final Plan START =
      new SlabEdit.Add(
              Slab.of("drive", Outline.of(List.of(p(0, 0), p(240, 0), p(240, 480), p(0, 480)))))
          .applyTo(Plan.EMPTY);

  @Test
  void finishIsOneStepAndLeavesTheRest() {
    History history =
        History.opened(START)
            .done(
                new SlabEdit.SetFinishing(
                    "drive", Finishing.UNSAID.withFinish(Optional.of(Finish.STAMPED))));
    Slab drive = history.now().slab("drive").orElseThrow();

    assertThat(drive.finish()).contains(Finish.STAMPED);
    assertThat(drive.withFinishing(Finishing.UNSAID)).isEqualTo(START.slab("drive").orElseThrow());
    assertThat(history.undone().now()).isEqualTo(START);
  }

  @Test
  void undoingEverythingRestoresEveryPlanOnTheWayAndRedoingComesBack() {
    for (long seed = 1; seed <= 40; seed++) {
      Random random = new Random(seed);
      History history = History.opened(START);
      List<Plan> seen = new java.util.ArrayList<>(List.of(START));
      for (int i = 0; i < 25; i++) {
        History next = history.done(anyEdit(random, history.now()));
        if (next.past().size() > history.past().size()) {
          seen.add(next.now());
        }
        history = next;
      }
      History end = history;
      for (int i = seen.size() - 1; i >= 0; i--) {
        assertThat(history.now()).as("seed %d, step %d", seed, i).isEqualTo(seen.get(i));
        history = history.undone();
      }
      while (history.canRedo()) {
        history = history.redone();
      }
      assertThat(history).as("seed %d", seed).isEqualTo(end);
    }
  }

  @Test
  void aDragIsOneStepAndUndoesAtOnce() {
    History history = History.opened(START);
    for (int i = 1; i <= 20; i++) {
      history =
          history.continued(new SlabEdit.MoveCorner(Ref.outline("drive", 2), p(240 + i, 480)));
    }
    assertThat(history.past()).hasSize(1);
    assertThat(history.now().slabs().getFirst().outline().vertices().get(2).at())
        .isEqualTo(p(260, 480));
    assertThat(history.undone().now()).isEqualTo(START);
  }

  @Test
  void mergedEditDoesWhatBothDoInTurn() {
    Edit first = new SlabEdit.MoveSlab("drive", p(3, 4));
    Edit second = new SlabEdit.MoveSlab("drive", p(10, -1));
    assertThat(first.mergedWith(second).orElseThrow().applyTo(START))
        .isEqualTo(second.applyTo(first.applyTo(START)));
  }

  @Test
  void undoingPastTheSavedStepShowsNotSavedAndRedoingShowsSavedAgain() {
    History history =
        History.opened(START).done(new SlabEdit.SetUse("drive", Use.TRUCK)).savedNow();
    assertThat(history.isSaved()).isTrue();
    assertThat(history.undone().isSaved()).isFalse();
    assertThat(history.undone().redone().isSaved()).isTrue();
    History other = history.undone().done(new SlabEdit.SetUse("drive", Use.FOOT));
    assertThat(other.isSaved()).isFalse();
    assertThat(History.begun(START).isSaved()).isFalse();
  }

  @Test
  void editThatChangesNothingIsNoStep() {
    assertThat(History.opened(START).done(new SlabEdit.SetUse("drive", Use.CAR)).canUndo())
        .isFalse();
  }

  @Test
  void dragThatComesBackLeavesNoStep() {
    Ref corner = Ref.outline("drive", 1);
    History history = History.opened(START).continued(new SlabEdit.MoveCorner(corner, p(300, 0)));
    history = history.continued(new SlabEdit.MoveCorner(corner, p(240, 0)));
    assertThat(history).isEqualTo(History.opened(START));
  }

  @Test
  void whatFollowsFromAStepIsUndoneWithIt() {
    History history = History.opened(START).done(new SlabEdit.SetUse("drive", Use.TRUCK));
    Joint joint =
        Joint.of(
            "J1", JointKind.CONTRACTION, Path.straight(p(120, 0), p(120, 480)), Purpose.SPACING);
    Plan laid = new JointEdit.Lay("drive", List.of(joint), List.of()).applyTo(history.now());
    history = history.following(laid);
    assertThat(history.past()).hasSize(1);
    assertThat(history.undone().now()).isEqualTo(START);
    assertThat(history.undone().redone().now()).isEqualTo(laid);
  }

  @Test
  void cornerPutInAndTakenOutLeavesTheEdgesAsTheyWere() {
    Plan plan =
        new SlabEdit.SetEdge(Ref.outline("drive", 2), EdgeSetting.against(Against.BUILDING))
            .applyTo(START);
    Plan more =
        new SlabEdit.AddCorner(Ref.outline("drive", 0), Vertex.at(p(100, -10))).applyTo(plan);
    assertThat(more.slabs().getFirst().edge(3).against()).isEqualTo(Against.BUILDING);
    assertThat(new SlabEdit.RemoveCorner(Ref.outline("drive", 1)).applyTo(more)).isEqualTo(plan);
  }

  @Test
  void cornerMovedKeepsTheBowOfItsArcs() {
    Plan bent =
        new SlabEdit.BendEdge(Ref.outline("drive", 0), Optional.of(p(120, -24))).applyTo(START);
    Plan moved = new SlabEdit.MoveCorner(Ref.outline("drive", 1), p(480, 0)).applyTo(bent);
    assertThat(moved.slabs().getFirst().outline().vertices().getFirst().via())
        .contains(p(240, -48));
  }

  @Test
  void jointMovedByHandIsLocked() {
    Joint joint =
        Joint.of(
            "J1", JointKind.CONTRACTION, Path.straight(p(120, 0), p(120, 480)), Purpose.SPACING);
    Plan laid = new JointEdit.Lay("drive", List.of(joint), List.of()).applyTo(START);
    Plan moved =
        new JointEdit.Move("drive", "J1", Path.straight(p(100, 0), p(100, 480))).applyTo(laid);
    assertThat(moved.slabs().getFirst().lockedJoints()).hasSize(1);
    Plan free = new JointEdit.Lock("drive", "J1", false).applyTo(moved);
    assertThat(free.slabs().getFirst().lockedJoints()).isEmpty();
  }

  @Test
  void removingASlabTakesItsFixedObjectsAlong() {
    Plan plan = new FixedEdit.Add(post("post")).applyTo(START);
    assertThat(new SlabEdit.Remove("drive").applyTo(plan)).isEqualTo(Plan.EMPTY);
  }

  @Test
  void editThatNamesWhatIsNotThereIsRefused() {
    assertThatThrownBy(() -> new SlabEdit.SetUse("walk", Use.FOOT).applyTo(START))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("walk");
    assertThatThrownBy(
            () -> new SlabEdit.MoveCorner(Ref.outline("drive", 9), p(0, 0)).applyTo(START))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("9");
  }

  private static Edit anyEdit(Random random, Plan plan) {
    int corners = plan.slabs().getFirst().outline().vertices().size();
    Ref corner = Ref.outline("drive", random.nextInt(corners));
    Point somewhere = p(random.nextInt(500), random.nextInt(500));
    return switch (random.nextInt(10)) {
      case 0 -> new SlabEdit.MoveCorner(corner, somewhere);
      case 1 -> new SlabEdit.AddCorner(corner, Vertex.at(somewhere));
      case 2 -> corners > 3 ? new SlabEdit.RemoveCorner(corner) : new JobEdit(Job.UNNAMED);
      case 3 ->
          new SlabEdit.SetEdge(corner, EdgeSetting.against(Against.values()[random.nextInt(5)]));
      case 4 -> new SlabEdit.SetThickness("drive", Length.inches(4 + random.nextInt(4)));
      case 5 -> new SlabEdit.SetUse("drive", Use.values()[random.nextInt(3)]);
      case 6 -> new SlabEdit.MoveSlab("drive", p(random.nextInt(9), random.nextInt(9)));
      case 7 -> new FixedEdit.Add(post("post" + plan.fixed().size()));
      case 8 ->
          new SlabEdit.AddOpening(
              "drive",
              new Opening(
                  Outline.of(List.of(p(10, 10), p(20, 10), p(20, 20))),
                  java.util.Map.of(),
                  Kept.NOTHING));
      default ->
          new Together(
              List.of(
                  new SlabEdit.SetBase("drive", Length.inches(random.nextInt(8))),
                  new SlabEdit.BendEdge(corner, Optional.of(somewhere))));
    };
  }

  private static FixedObject post(String id) {
    return new FixedObject(
        id,
        "drive",
        FixedKind.POST,
        new FixedShape.Round(p(50, 50), Length.inches(6), Kept.NOTHING),
        Kept.NOTHING);
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
