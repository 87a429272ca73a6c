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
 * Bends a side by its middle: out, in, or straight again, which draws the hand gently.
 *
 * @param side which one
 * @param grip where the hand pressed
 */
record BendSide(Ref side, Pointer grip) implements Gesture {
  /** A bow flatter than this is drawn straight; pixels. */
  private static final double STRAIGHT = 6;

  /** The handle in the middle of a picked side is taken from this far; pixels. */
  private static final double REACH = 10;

  /** Whether a hand at {@code pointer} takes hold of the middle of a side that is picked. */
  static boolean isAt(Desk desk, Ref side, Pointer pointer) {
    Optional<Edge> edge = Picks.edge(desk.plan(), side);
    return desk.picked().equals(new Pick.AtEdge(side))
        && edge.filter(e -> desk.viewport().toPaper(e.at(0.5)).distance(pointer.paper()) <= REACH)
            .isPresent();
  }

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(new Pick.AtEdge(side));
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    boolean isMoving = desk.hand().hold().isPresent();
    Optional<Edge> edge = Picks.edge(desk.plan(), side);
    if ((!isMoving && pointer.isClickAt(grip)) || edge.isEmpty()) {
      return desk;
    }
    Edge e = edge.get();
    Point middle = e.start().towards(e.end(), 0.5);
    double raw = pointer.plan().minus(middle).dot(SideShape.out(e));
    boolean isStraight = !pointer.isFree() && Math.abs(raw) < desk.viewport().inches(STRAIGHT);
    double step = pointer.step(desk.plan());
    double most = e.start().distance(e.end()) / 2;
    double bulge = isStraight ? 0 : Math.clamp(Math.rint(raw / step) * step, -most, most);
    return SideShape.bulging(desk, side, bulge, isMoving)
        .map(d -> d.picking(new Pick.AtEdge(side)).withHand(InHand.holding(new Hold.HeldBow(side))))
        .orElse(desk);
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return Extent.inSight(desk.letGo());
  }
}
