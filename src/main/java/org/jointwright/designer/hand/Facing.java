package org.jointwright.designer.hand;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * A side of a slab at rest that one in the hand faces: they run alongside each other, the slabs on
 * either hand of them, and where they come near the one in the hand is drawn against it.
 *
 * @param own the side in the hand
 * @param rest the side at rest
 */
record Facing(Segment own, Segment rest) {
  /** A side is drawn against another from this far; pixels. */
  static final double REACH = 9;

  /** Sides that lean less from each other run alongside: the sine, about half a degree. */
  private static final double ALONGSIDE = 0.009;

  /** Sides that lie along each other for less only touch at a corner, inches. */
  private static final double SHORTEST = 1;

  /** Every side of other slabs that a side faces. */
  static Stream<Facing> of(Plan plan, Segment own, List<String> moving) {
    return plan.slabs().stream()
        .filter(s -> !moving.contains(s.id()))
        .map(Slab::outline)
        .flatMap(o -> o.ring().edges().stream())
        .flatMap(e -> e instanceof Segment s ? Stream.of(new Facing(own, s)) : Stream.empty())
        .filter(Facing::isAlongside);
  }

  private boolean isAlongside() {
    Point u = own.direction(0);
    Point v = rest.direction(0);
    return u.dot(v) < 0 && Math.abs(u.cross(v)) < ALONGSIDE;
  }

  /** Which way is out of the slab at rest, of length 1. */
  Point out() {
    return rest.direction(0).left().times(-1);
  }

  /** How far the side in the hand is beyond the one at rest, if it is moved so; inches. */
  double off(Point by) {
    return own.at(0.5).plus(by).minus(rest.start()).dot(out());
  }

  /** Whether both lie along one another for a stretch if the one in the hand is moved so. */
  boolean isBeside(Point by) {
    double from = Math.max(0, along(own.end().plus(by)));
    double to = Math.min(rest.length(), along(own.start().plus(by)));
    return to - from >= SHORTEST;
  }

  private double along(Point p) {
    return p.minus(rest.start()).dot(rest.direction(0));
  }

  /** Where along the side at rest the near end stands, if the one in the hand is moved so. */
  Optional<Guide> guide(Point by) {
    double from = along(own.end().plus(by));
    if (from <= SHORTEST) {
      from = along(own.start().plus(by));
    }
    return from > SHORTEST && from < rest.length() - SHORTEST
        ? Optional.of(
            Guide.within(
                Guide.Kind.ON_SIDE, rest.start(), rest.at(from / rest.length()), rest.end()))
        : Optional.of(new Guide(Guide.Kind.ON_SIDE, rest.start(), rest.end()));
  }

  /** The straight sides of an outline. */
  static Stream<Segment> sides(Slab slab) {
    return slab.outline().ring().edges().stream()
        .flatMap((Edge e) -> e instanceof Segment s ? Stream.of(s) : Stream.<Segment>empty());
  }
}
