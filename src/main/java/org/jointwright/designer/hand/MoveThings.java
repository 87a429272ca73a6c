package org.jointwright.designer.hand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.designer.shaping.Whole;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Extent;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Point;

/**
 * Drags whole things: slabs with all that is in them, openings, several things at once. By whole
 * inches, or centimetres; a corner of a slab that comes near one of another slab stands at it, and
 * a side that comes near one that it faces lies against it, unless the hand is free.
 *
 * @param pick what is picked while it is dragged
 * @param things what moves
 * @param grip where the hand pressed
 */
record MoveThings(Pick pick, List<Thing> things, Pointer grip) implements Gesture {
  /** A corner is drawn to another from this far; pixels. */
  private static final double REACH = 11;

  /** Sides that lean less from square to one another run another way: the cosine. */
  private static final double OTHER_WAY = 0.7;

  private static final Point NOWHERE = new Point(0, 0);

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(pick);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    Optional<Hold.HeldThings> held = desk.hand().held(Hold.HeldThings.class);
    if (held.isEmpty() && pointer.isClickAt(grip)) {
      return desk;
    }
    // Undoing while the hand is down may take them away.
    if (!things.stream().allMatch(t -> t.isIn(desk.plan()))) {
      return desk;
    }
    Point come = held.map(Hold.HeldThings::moved).orElse(NOWHERE);
    Point raw = pointer.plan().minus(grip.plan());
    Optional<Pencil> corner = pointer.isFree() ? Optional.empty() : atCorner(desk, raw.minus(come));
    Point whole = Pointer.stepped(raw, pointer.step(desk.plan()));
    List<Facing> facing =
        pointer.isFree() || corner.isPresent() ? List.of() : facing(desk, raw.minus(come));
    Point by =
        corner
            .map(p -> p.at().minus(p.guides().getFirst().from()))
            .orElseGet(() -> against(facing, whole.minus(come)))
            .plus(come);
    Point left = by.minus(come);
    Optional<Pencil> shown =
        corner
            .map(p -> mark(p.at()))
            .or(
                () ->
                    facing.stream()
                        .findFirst()
                        .flatMap(f -> f.guide(left))
                        .map(g -> new Pencil(g.to(), List.of(g))));
    Motion more = Motion.by(by.minus(come));
    // A drag is a step of its own, even after another of the same things.
    return (held.isPresent() ? Whole.goingOn(desk, things, more) : Whole.put(desk, things, more))
        .or(() -> Optional.of(desk).filter(d -> held.isPresent() && by.equals(come)))
        .map(d -> d.picking(pick).withHand(InHand.holding(new Hold.HeldThings(things, by, shown))))
        .orElse(desk);
  }

  private static Pencil mark(Point at) {
    return new Pencil(at, List.of(new Guide(Guide.Kind.CORNER, at, at)));
  }

  /**
   * The corner of a slab at rest that a moved one comes nearest to, within reach.
   *
   * @param more how much farther the things would go
   */
  private Optional<Pencil> atCorner(Desk desk, Point more) {
    double reach = desk.viewport().inches(REACH);
    List<Point> rest = corners(desk.plan(), false);
    List<Pencil> near = new ArrayList<>();
    for (Point own : corners(desk.plan(), true)) {
      Point there = own.plus(more);
      rest.stream()
          .filter(p -> p.distance(there) <= reach)
          .map(p -> new Pencil(p, List.of(new Guide(Guide.Kind.CORNER, own, p))))
          .forEach(near::add);
    }
    return near.stream()
        .min(
            Comparator.comparingDouble(
                p -> p.guides().getFirst().from().plus(more).distance(p.at())));
  }

  /**
   * The side of a slab at rest that a moved one comes nearest to, and one that runs another way, as
   * in an inside corner: both within reach.
   *
   * @param more how much farther the things would go
   */
  private List<Facing> facing(Desk desk, Point more) {
    double reach = desk.viewport().inches(Facing.REACH);
    List<String> moving = slabs(desk.plan(), true).map(Slab::id).toList();
    List<Facing> near =
        slabs(desk.plan(), true)
            .flatMap(Facing::sides)
            .flatMap(s -> Facing.of(desk.plan(), s, moving))
            .filter(f -> Math.abs(f.off(more)) <= reach && f.isBeside(more))
            .sorted(Comparator.comparingDouble(f -> Math.abs(f.off(more))))
            .toList();
    return near.stream()
        .filter(
            f ->
                f.equals(near.getFirst())
                    || f.equals(
                        near.stream()
                            .filter(x -> Math.abs(x.out().dot(near.getFirst().out())) < OTHER_WAY)
                            .findFirst()
                            .orElse(near.getFirst())))
        .toList();
  }

  /** A way corrected so that the sides lie against those that they face. */
  private static Point against(List<Facing> facing, Point more) {
    if (facing.isEmpty()) {
      return more;
    }
    Facing first = facing.getFirst();
    Point at = more.minus(first.out().times(first.off(more)));
    if (facing.size() == 1) {
      return at;
    }
    // Along the first, so that it stays against that.
    Facing second = facing.get(1);
    Point along = first.out().left();
    return at.minus(along.times(second.off(at) / along.dot(second.out())));
  }

  private Stream<Slab> slabs(Plan plan, boolean moving) {
    return plan.slabs().stream()
        .filter(s -> things.contains(new Thing.WholeSlab(s.id())) == moving);
  }

  private List<Point> corners(Plan plan, boolean moving) {
    return slabs(plan, moving)
        .map(Slab::outline)
        .flatMap(o -> o.vertices().stream())
        .map(Vertex::at)
        .toList();
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    boolean isClick = desk.hand().hold().isEmpty() && pick instanceof Pick.Several;
    return isClick
        ? desk.picking(UnderPointer.of(desk, pointer.plan()))
        : Extent.inSight(desk.letGo());
  }
}
