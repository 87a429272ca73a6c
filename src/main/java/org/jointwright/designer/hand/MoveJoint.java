package org.jointwright.designer.hand;

import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.JointMark;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * Drags a joint sideways and locks it where it is let go. Its mark stays at whole inches, or whole
 * centimetres, unless the hand wants no help. The other joints are laid anew while it moves.
 *
 * @param pick the joint before the drag
 * @param joint the same
 * @param number its number then
 * @param before the plan then
 * @param grip where on the paper the hand pressed
 */
record MoveJoint(Pick.AtJoint pick, Joint joint, String number, Plan before, Pointer grip)
    implements Gesture {
  private static final double SLACK = 4;
  private static final double WHOLE_CENTIMETRE = 10 / 25.4;

  static MoveJoint of(Desk desk, Pick.AtJoint pick, String number, Pointer pointer) {
    Joint joint = Picks.joint(desk.plan(), pick).orElseThrow();
    return new MoveJoint(pick, joint, number, desk.plan(), pointer);
  }

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(pick);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    boolean isMoving = desk.hand().hold().isPresent();
    boolean isClick = pointer.paper().distance(grip.paper()) < SLACK;
    if ((!isMoving && isClick) || !JointSlide.canSlide(joint)) {
      return desk;
    }
    Point by = pointer.plan().minus(grip.plan());
    Optional<Path> free = JointSlide.by(before, pick.slab(), joint, by);
    Optional<Path> to = pointer.isFree() ? free : free.flatMap(this::atWholeMark).or(() -> free);
    return to.map(path -> moved(desk, path, isMoving)).orElse(desk);
  }

  private Desk moved(Desk desk, Path path, boolean isMoving) {
    JointEdit.Move edit = new JointEdit.Move(pick.slab(), pick.joint(), path);
    Desk moved = isMoving ? desk.goingOn(edit) : desk.edited(edit);
    Joint now = joint.withPath(path).withLocked(true);
    Hold hold = new Hold.HeldJoint(pick.slab(), number, joint.path(), now);
    return moved.picking(pick).withHand(InHand.holding(hold));
  }

  private Optional<Path> atWholeMark(Path path) {
    Joint there = joint.withPath(path);
    Lettering lettering = Lettering.of(before);
    return JointMark.either(before, lettering, there)
        .flatMap(
            mark -> {
              double step = before.unit().isMetric() ? WHOLE_CENTIMETRE : 1;
              double at = Math.round(mark.at() / step) * step;
              Point by = JointSlide.onTape(mark, at).minus(mark.place());
              return JointSlide.by(before, pick.slab(), there, by);
            });
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return desk.letGo();
  }
}
