package org.jointwright.designer.hand;

import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.GivenEdit;
import org.jointwright.plan.edit.ZoneEdit;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Drags a zone that is kept clear, or an old joint beside the slabs: by whole inches, or
 * centimetres, unless the hand is free. An old joint that ends at a straight side stays at it.
 *
 * @param pick which one
 * @param grip where the hand pressed
 * @param along the heading that it keeps to, of length 1; empty where it goes anywhere
 */
record MoveGround(Pick pick, Pointer grip, Optional<Point> along) implements Gesture {
  /** An end this near to a side stands at it; inches. */
  private static final double AT_SIDE = 1;

  static MoveGround zone(Pick.AtZone pick, Pointer pointer) {
    return new MoveGround(pick, pointer, Optional.empty());
  }

  static MoveGround given(Desk desk, Pick.AtGiven pick, Pointer pointer) {
    GivenJoint joint = desk.plan().given().get(pick.joint());
    return new MoveGround(pick, pointer, side(desk.plan(), joint));
  }

  private static Optional<Point> side(Plan plan, GivenJoint joint) {
    return plan.slabs().stream()
        .flatMap(s -> s.outline().ring().edges().stream())
        .filter(Segment.class::isInstance)
        .filter(
            e ->
                Math.min(e.distance(joint.path().start()), e.distance(joint.path().end()))
                    <= AT_SIDE)
        .findFirst()
        .map((Edge e) -> e.direction(0).unit());
  }

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(pick);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    Optional<Hold.HeldGround> held = desk.hand().held(Hold.HeldGround.class);
    if (held.isEmpty() && pointer.isClickAt(grip)) {
      return desk;
    }
    // Undoing while the hand is down may take it away.
    if (Picks.still(desk.plan(), pick, desk.plan()).equals(Pick.NOTHING)) {
      return desk;
    }
    double step = pointer.step(desk.plan());
    Point by = stepped(pointer.plan().minus(grip.plan()), step);
    Point more = by.minus(held.map(Hold.HeldGround::moved).orElse(new Point(0, 0)));
    Edit edit =
        pick instanceof Pick.AtZone z
            ? new ZoneEdit.Move(z.slab(), z.zone(), more)
            : new GivenEdit.Move(((Pick.AtGiven) pick).joint(), more);
    Desk moved = held.isPresent() ? desk.goingOn(edit) : desk.edited(edit);
    return moved.picking(pick).withHand(InHand.holding(new Hold.HeldGround(pick, by)));
  }

  private Point stepped(Point by, double step) {
    return along
        .map(u -> u.times(Math.rint(by.dot(u) / step) * step))
        .orElseGet(() -> Pointer.stepped(by, step));
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return desk.letGo();
  }
}
