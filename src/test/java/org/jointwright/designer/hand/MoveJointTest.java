package org.jointwright.designer.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Judgement;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Step;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class MoveJointTest {
  private static Joint across(String id, double y) {
    Path path = Path.straight(new Point(0, y), new Point(240, y));
    return Joint.of(id, JointKind.CONTRACTION, path, Purpose.SPACING);
  }

  private static Plan plan(Joint... joints) {
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(240, 0), new Point(240, 360), new Point(0, 360)));
    return Plan.EMPTY.withSlabs(
        List.of(Slab.of("drive", outline).withLaid(List.of(joints), List.of())));
  }

  private static Desk answered(Desk desk, Plan plan) {
    long generation = desk.laying().wish().orElseThrow().generation();
    return desk.answered(
        new Laid(generation, plan, Layouts.of(plan), new Judgement(List.of(), List.of())));
  }

  private static Pointer at(Desk desk, double x, double y) {
    Point paper = desk.viewport().toPaper(new Point(x, y));
    return Pointer.on(desk.viewport(), paper.x(), paper.y(), true);
  }

  private static Joint joint(Desk desk, String id) {
    return desk.plan().slabs().getFirst().joints().stream()
        .filter(j -> j.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anAnswerBetweenPressAndDragGivesTheJointUnderTheHandItsNewName() {
    Desk desk = Desk.begun(plan(across("J1", 120), across("J2", 240)));
    Pointer grip = at(desk, 100, 120);
    Gesture move = new MoveJoint(new Pick.AtJoint("drive", "J1"), grip);
    Desk pressed = move.press(desk, grip);
    Desk renamed = answered(pressed, plan(across("J1", 240), across("J2", 120)));
    Desk dragged = move.drag(renamed, at(desk, 100, 150));
    assertThat(joint(dragged, "J2").path().start().y()).isCloseTo(150, offset());
    assertThat(joint(dragged, "J2").locked()).isTrue();
    assertThat(joint(dragged, "J1").path().start().y()).isEqualTo(240);
    Desk further = move.drag(dragged, at(desk, 100, 170));
    assertThat(joint(further, "J2").path().start().y()).isCloseTo(170, offset());
    assertThat(further.history().past()).hasSize(1);
  }

  @Test
  void anAnswerWithoutTheJointUnderTheHandLeavesNothingToDrag() {
    Desk desk = Desk.begun(plan(across("J1", 120), across("J2", 240)));
    Pointer grip = at(desk, 100, 120);
    Gesture move = new MoveJoint(new Pick.AtJoint("drive", "J1"), grip);
    Desk without = answered(move.press(desk, grip), plan(across("J1", 300)));
    assertThat(move.drag(without, at(desk, 100, 150))).isSameAs(without);
  }

  private static org.assertj.core.data.Offset<Double> offset() {
    return org.assertj.core.data.Offset.offset(1e-6);
  }

  private static final Plan WITH_STEM =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                      "drive",
                      Outline.of(
                          List.of(
                              new Point(0, 0),
                              new Point(240, 0),
                              new Point(240, 200),
                              new Point(120, 200),
                              new Point(120, 360),
                              new Point(0, 360))))
                  .withLaid(List.of(across("J1", 130)), List.of())));

  private static Desk dragged(double to, boolean free) {
    Desk desk = Desk.begun(WITH_STEM).fitted().withStep(Step.JOINTS);
    Point from = desk.viewport().toPaper(new Point(60, 130));
    Point there = desk.viewport().toPaper(new Point(60, to));
    Pointer grip = Pointer.on(desk.viewport(), from.x(), from.y(), free);
    Pointer end = Pointer.on(desk.viewport(), there.x(), there.y(), free);
    Gesture move = new MoveJoint(new Pick.AtJoint("drive", "J1"), grip);
    return move.drag(move.press(desk, grip), end);
  }

  private static Guide.Kind guide(Desk desk) {
    return desk.hand().hold().stream()
        .map(h -> ((Hold.HeldJoint) h).guide().orElseThrow().kind())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void undoLeavesTheJointPickedThatItGivesBack() {
    assertThat(dragged(154, true).undone().picked()).isEqualTo(new Pick.AtJoint("drive", "J1"));
    // Farther than 2 ft: by then the name may be another joint’s.
    assertThat(dragged(155, true).undone().picked()).isEqualTo(Pick.NOTHING);
  }

  @Test
  void aCornerAndAnEvenPlaceDrawAJointThatIsSlid() {
    Desk corner = dragged(198.4, false);
    assertThat(joint(corner, "J1").path().start().y()).isEqualTo(200);
    assertThat(joint(corner, "J1").path().end())
        .as("it ends at the inside corner and runs along no edge")
        .isEqualTo(new Point(120, 200));
    assertThat(guide(corner)).isEqualTo(Guide.Kind.CORNER);
    Desk even = dragged(101.3, false);
    assertThat(joint(even, "J1").path().start().y()).as("half of 200").isCloseTo(100, within(1e-9));
    assertThat(guide(even)).isEqualTo(Guide.Kind.EVEN);
    Desk free = dragged(198.4, true);
    assertThat(joint(free, "J1").path().start().y()).isCloseTo(198.4, within(0.1));
    Desk apart = dragged(150.3, false);
    assertThat(joint(apart, "J1").path().start().y()).as("to whole inches").isEqualTo(150);
  }
}
