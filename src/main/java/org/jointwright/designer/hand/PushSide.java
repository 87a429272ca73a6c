package org.jointwright.designer.hand;

import java.util.Optional;
import org.jointwright.designer.shaping.SideShape;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Extent;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Pushes a whole side out or in; the sides beside it keep their way. By whole inches, or
 * centimetres, unless the hand is free.
 *
 * @param side which one
 * @param grip where the hand pressed
 * @param was where the side ran then
 */
record PushSide(Ref side, Pointer grip, Edge was) implements Gesture {
  static PushSide of(Desk desk, Ref side, Pointer pointer) {
    return new PushSide(side, pointer, Picks.edge(desk.plan(), side).orElseThrow());
  }

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(new Pick.AtEdge(side));
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    boolean isMoving = desk.hand().hold().isPresent();
    Optional<Edge> now = Picks.edge(desk.plan(), side);
    if ((!isMoving && pointer.isClickAt(grip)) || now.isEmpty()) {
      return desk;
    }
    Point out = SideShape.out(was);
    double step = pointer.step(desk.plan());
    double wanted = Math.rint(pointer.plan().minus(grip.plan()).dot(out) / step) * step;
    double come = now.get().start().minus(was.start()).dot(out);
    return SideShape.pushed(desk, side, wanted - come, isMoving)
        .map(d -> d.withHand(InHand.holding(new Hold.HeldSide(side))))
        .orElse(desk);
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return Extent.inSight(desk.letGo());
  }
}
