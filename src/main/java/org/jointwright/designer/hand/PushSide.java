package org.jointwright.designer.hand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.shaping.SharedSide;
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
import org.jointwright.shape.Segment;

/**
 * Pushes a whole side out or in; the sides beside it keep their way, and those of other slabs that
 * lie along it go with it, unless the hand is free when it begins. By whole inches, or centimetres,
 * and against a side of another slab that it comes near, unless the hand is free.
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
    Optional<Hold.HeldSide> held = desk.hand().held(Hold.HeldSide.class);
    Optional<Edge> now = Picks.edge(desk.plan(), side);
    if ((held.isEmpty() && pointer.isClickAt(grip)) || now.isEmpty()) {
      return desk;
    }
    List<Ref> with =
        held.map(Hold.HeldSide::with)
            .orElseGet(() -> pointer.isFree() ? List.of() : SharedSide.along(desk.plan(), side));
    Point out = SideShape.out(was);
    double raw = pointer.plan().minus(grip.plan()).dot(out);
    double step = pointer.step(desk.plan());
    Optional<Facing> facing =
        pointer.isFree() ? Optional.empty() : facing(desk, with, out.times(raw));
    double wanted =
        facing.map(f -> f.off(new Point(0, 0))).orElseGet(() -> Math.rint(raw / step) * step);
    double come = now.get().start().minus(was.start()).dot(out);
    Hold hold = new Hold.HeldSide(side, with, facing.flatMap(f -> f.guide(out.times(wanted))));
    return SharedSide.pushed(desk, side, with, wanted - come, held.isPresent())
        .map(d -> d.withHand(InHand.holding(hold)))
        .orElse(desk);
  }

  /** The side of another slab at rest that is near where the hand has come. */
  private Optional<Facing> facing(Desk desk, List<Ref> with, Point by) {
    if (!(was instanceof Segment own) || side.ring() != Ref.OUTLINE) {
      return Optional.empty();
    }
    List<String> moving = new ArrayList<>(List.of(side.slab()));
    with.forEach(r -> moving.add(r.slab()));
    double reach = desk.viewport().inches(Facing.REACH);
    return Facing.of(desk.plan(), own, moving)
        .filter(f -> Math.abs(f.off(by)) <= reach && f.isBeside(by))
        .min(Comparator.comparingDouble(f -> Math.abs(f.off(by))));
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return Extent.inSight(desk.letGo());
  }
}
