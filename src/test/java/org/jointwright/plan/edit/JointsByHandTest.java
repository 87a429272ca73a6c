package org.jointwright.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A slab of 20 by 30 ft: whoever moves one joint finds the others where they were. */
class JointsByHandTest {
  private static Joint joint(String id, double x, double y, double toX, double toY) {
    Path path = Path.straight(new Point(x, y), new Point(toX, toY));
    return Joint.of(id, JointKind.CONTRACTION, path, Purpose.SPACING);
  }

  private static final Joint UPRIGHT = joint("J1", 120, 0, 120, 360);
  private static final Joint LEFT = joint("J2", 0, 120, 120, 120);
  private static final Joint RIGHT = joint("J3", 120, 120, 240, 120);
  private static final Joint ABOVE = joint("J4", 0, 240, 120, 240);

  private static Outline rectangle(double x, double y, double toX, double toY) {
    return Outline.of(
        List.of(new Point(x, y), new Point(toX, y), new Point(toX, toY), new Point(x, toY)));
  }

  private static Plan plan(List<BoxOut> boxOuts, Joint... joints) {
    Slab slab = Slab.of("drive", rectangle(0, 0, 240, 360)).withLaid(List.of(joints), boxOuts);
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  private static List<Joint> joints(Plan plan) {
    return plan.slabs().getFirst().joints();
  }

  private static JointEdit.Move move(Joint joint, double x, double y, double toX, double toY) {
    return new JointEdit.Move("drive", joint.id(), joint("", x, y, toX, toY).path());
  }

  @Test
  void whatEndsOnItGoesAlongAndAllElseStays() {
    Plan before = plan(List.of(), UPRIGHT, LEFT, RIGHT, ABOVE, joint("J5", 200, 120, 200, 360));
    List<Joint> now = joints(move(UPRIGHT, 132, 0, 132, 360).applyTo(before));
    assertThat(now)
        .containsExactly(
            joint("J1", 132, 0, 132, 360).withLocked(true),
            joint("J2", 0, 120, 132, 120),
            joint("J3", 132, 120, 240, 120),
            joint("J4", 0, 240, 132, 240),
            joint("J5", 200, 120, 200, 360));
  }

  @Test
  void anEndHeldByAnotherLineStays() {
    Joint across = joint("J2", 0, 120, 240, 120);
    Plan before =
        plan(List.of(), joint("J1", 120, 0, 120, 120), across, joint("J3", 120, 120, 120, 360));
    assertThat(joints(move(UPRIGHT, 132, 0, 132, 120).applyTo(before)))
        .contains(across, joint("J3", 120, 120, 120, 360));
  }

  @Test
  void aLineOfPiecesMovesAsOne() {
    Plan before = plan(List.of(), UPRIGHT, LEFT, RIGHT);
    JointEdit.Move both =
        new JointEdit.Move(
            "drive",
            "J2",
            joint("", 0, 100, 120, 100).path(),
            Map.of("J3", joint("", 120, 100, 240, 100).path()));
    assertThat(joints(both.applyTo(before)))
        .containsExactly(
            UPRIGHT,
            joint("J2", 0, 100, 120, 100).withLocked(true),
            joint("J3", 120, 100, 240, 100).withLocked(true));
  }

  @Test
  void atABoxOutItIsCutAndGoesOnBehindIt() {
    BoxOut post = new BoxOut("post", rectangle(110, 170, 130, 190), Kept.NOTHING);
    Plan before = plan(List.of(post), joint("J1", 90, 0, 90, 360));
    assertThat(joints(move(UPRIGHT, 120, 0, 120, 360).applyTo(before)))
        .containsExactly(
            joint("J1", 120, 0, 120, 170).withLocked(true),
            joint("J2", 120, 190, 120, 360).withLocked(true));
    assertThat(joints(move(UPRIGHT, 131, 0, 131, 360).applyTo(before)))
        .as("just beside it")
        .hasSize(1);
  }

  @Test
  void aJointThatIsMovedOverIsGone() {
    Plan before = plan(List.of(), UPRIGHT, RIGHT, joint("J4", 120, 200, 132, 200));
    assertThat(joints(move(UPRIGHT, 133, 0, 133, 360).applyTo(before)))
        .as("J4 ended 12 in beyond the old place, on nothing")
        .extracting(Joint::id)
        .containsExactly("J1", "J3");
  }

  @Test
  void whatEndedOnAJointTakenOutRunsOnToTheNextLine() {
    Plan before = plan(List.of(), UPRIGHT, RIGHT, joint("J5", 60, 0, 60, 360));
    assertThat(joints(new JointEdit.Remove("drive", "J1").applyTo(before)))
        .containsExactly(joint("J3", 60, 120, 240, 120), joint("J5", 60, 0, 60, 360));
  }

  @Test
  void piecesThatMeetWhereAJointWasStay() {
    Plan before = plan(List.of(), UPRIGHT, LEFT, RIGHT);
    assertThat(joints(new JointEdit.Remove("drive", "J1").applyTo(before)))
        .containsExactly(LEFT, RIGHT);
  }

  @Test
  void movedBackItIsAsBefore() {
    Plan before = plan(List.of(), UPRIGHT.withLocked(true), LEFT, RIGHT, ABOVE);
    Plan there = move(UPRIGHT, 171, 0, 171, 360).applyTo(before);
    assertThat(move(UPRIGHT, 120, 0, 120, 360).applyTo(there)).isEqualTo(before);
  }
}
