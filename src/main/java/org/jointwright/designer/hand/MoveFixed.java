package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.shape.Point;

/**
 * Drags a fixed object about in its slab.
 *
 * @param id which one
 * @param grip where the hand pressed
 * @param was the middle of the object then
 */
record MoveFixed(String id, Pointer grip, Point was) implements Gesture {
  static MoveFixed of(Desk desk, String id, Pointer pointer) {
    return new MoveFixed(id, pointer, middle(desk, id));
  }

  private static Point middle(Desk desk, String id) {
    FixedObject object = desk.plan().fixedObject(id).orElseThrow();
    return object.shape().ring().box().centre();
  }

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(new Pick.AtFixed(id));
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    boolean isMoving = desk.hand().hold().isPresent();
    if (!isMoving && pointer.isClickAt(grip)) {
      return desk;
    }
    Point wanted = was.plus(pointer.plan().minus(grip.plan()));
    Point to = pointer.isFree() ? wanted : new Point(Math.rint(wanted.x()), Math.rint(wanted.y()));
    // Undoing while the hand is down may take the object away.
    boolean isInside =
        desk.plan()
            .fixedObject(id)
            .flatMap(f -> desk.plan().slab(f.slab()))
            .filter(s -> s.region().contains(to))
            .isPresent();
    if (!isInside) {
      return desk;
    }
    FixedEdit.Move edit = new FixedEdit.Move(id, to.minus(middle(desk, id)));
    Desk moved = isMoving ? desk.goingOn(edit) : desk.edited(edit);
    return moved.withHand(InHand.holding(new Hold.HeldFixed(id)));
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return desk.letGo();
  }
}
