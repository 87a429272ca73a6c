package org.jointwright.designer.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Step;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Zones and old joints under the hand, and joints that are out of sight. */
class MoveGroundTest {
  private static Outline rectangle(double left, double low, double right, double high) {
    return Outline.of(
        List.of(
            new Point(left, low),
            new Point(right, low),
            new Point(right, high),
            new Point(left, high)));
  }

  private static final KeepClear ZONE = KeepClear.of("sewer", rectangle(60, 100, 120, 140));
  private static final GivenJoint OLD =
      GivenJoint.of(Path.straight(new Point(240, 90), new Point(400, 90)));

  private static final Plan PLAN =
      Plan.EMPTY
          .withSlabs(
              List.of(Slab.of("drive", rectangle(0, 0, 240, 360)).withKeepClear(List.of(ZONE))))
          .withGiven(List.of(OLD));

  private static final Desk DESK = Desk.begun(PLAN).fitted();

  private static Pointer at(double x, double y) {
    Point paper = DESK.viewport().toPaper(new Point(x, y));
    return Pointer.on(DESK.viewport(), paper.x(), paper.y(), false);
  }

  private static Desk dragged(Pointer from, Pointer... to) {
    Gesture g = Gestures.begin(DESK, from, "slab");
    Desk desk = g.press(DESK, from);
    for (Pointer p : to) {
      desk = g.drag(desk, p);
    }
    return g.release(desk, to[to.length - 1]);
  }

  @Test
  void aZoneIsDraggedByWholeInchesAsOneStep() {
    Desk moved = dragged(at(90, 120), at(80, 90), at(102.3, 150.4));
    assertThat(moved.plan().slabs().getFirst().keepClear())
        .containsExactly(KeepClear.of("sewer", rectangle(72, 130, 132, 170)));
    assertThat(moved.picked()).isEqualTo(new Pick.AtZone("drive", 0));
    assertThat(moved.hand().hold()).isEmpty();
    assertThat(moved.undone().plan()).isEqualTo(PLAN);
  }

  @Test
  void anOldJointStaysAtTheSideItMeets() {
    Desk moved = dragged(at(300, 90), at(330, 70), at(352, 114.2));
    assertThat(moved.plan().given())
        .containsExactly(GivenJoint.of(Path.straight(new Point(240, 114), new Point(400, 114))));
    assertThat(moved.undone().plan()).isEqualTo(PLAN);
  }

  @Test
  void aClickPicksAndMovesNothing() {
    Desk clicked = dragged(at(90, 120), at(90, 120));
    assertThat(clicked.plan()).isEqualTo(PLAN);
    assertThat(clicked.picked()).isEqualTo(new Pick.AtZone("drive", 0));
  }

  @Test
  void aJointThatAFirstAnswerHasTakenOutOfSightIsNotPicked() {
    Slab slab = Slab.of("drive", rectangle(0, 0, 240, 360));
    Plan before = Plan.EMPTY.withSlabs(List.of(slab.withLaid(List.of(joint(120)), List.of())));
    Plan first = Plan.EMPTY.withSlabs(List.of(slab.withLaid(List.of(joint(180)), List.of())));
    Desk desk = Desk.begun(before).fitted().withStep(Step.JOINTS);
    Pointer there = at(desk, 100, 120);
    assertThat(UnderPointer.of(desk, there.plan())).isEqualTo(new Pick.AtJoint("drive", "J1"));
    Answer answer = Answer.asItStands(first);
    Laid laid = new Laid(1, before, Layouts.of(first), answer.judgement());
    Desk waiting = desk.answered(laid.asFirst());
    assertThat(UnderPointer.of(waiting, there.plan())).isEqualTo(new Pick.WholeSlab("drive"));
  }

  private static Pointer at(Desk desk, double x, double y) {
    Point paper = desk.viewport().toPaper(new Point(x, y));
    return Pointer.on(desk.viewport(), paper.x(), paper.y(), false);
  }

  private static Joint joint(double y) {
    Path path = Path.straight(new Point(0, y), new Point(240, y));
    return Joint.of("J1", JointKind.CONTRACTION, path, Purpose.SPACING);
  }
}
