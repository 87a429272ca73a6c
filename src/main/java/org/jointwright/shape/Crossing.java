package org.jointwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A place where two edges meet.
 *
 * @param at where
 * @param first the share of the first edge's length, in [0, 1]
 * @param second the share of the second edge's length, in [0, 1]
 */
public record Crossing(Point at, double first, double second) {
  /** Rounding that is forgiven where an end just reaches the other edge, inches. */
  private static final double REACH = 1e-7;

  /**
   * Every place where the edges cross or touch in a point. Edges that lie on each other along a
   * stretch have none for the stretch itself: its ends are ends of one of the edges, ask {@link
   * Edge#nearest}.
   */
  public static List<Crossing> of(Edge a, Edge b) {
    if (!a.box().grown(REACH).meets(b.box())) {
      return List.of();
    }
    return switch (a) {
      case Segment s ->
          switch (b) {
            case Segment t -> segments(s, t);
            case Arc c -> segmentArc(s, c);
          };
      case Arc c ->
          switch (b) {
            case Segment s -> segmentArc(s, c).stream().map(x -> x.swapped()).toList();
            case Arc d -> arcs(c, d);
          };
    };
  }

  private Crossing swapped() {
    return new Crossing(at, /* first= */ second, /* second= */ first);
  }

  private static List<Crossing> segments(Segment a, Segment b) {
    Point u = a.end().minus(a.start());
    Point v = b.end().minus(b.start());
    double den = u.cross(v);
    if (Math.abs(den) <= 1e-12 * u.norm() * v.norm()) {
      return List.of();
    }
    Point w = b.start().minus(a.start());
    double t = w.cross(v) / den;
    double s = w.cross(u) / den;
    double reachA = REACH / u.norm();
    double reachB = REACH / v.norm();
    if (t < -reachA || t > 1 + reachA || s < -reachB || s > 1 + reachB) {
      return List.of();
    }
    t = Math.clamp(t, 0, 1);
    return List.of(new Crossing(a.at(t), t, Math.clamp(s, 0, 1)));
  }

  private static List<Crossing> segmentArc(Segment s, Arc c) {
    Point u = s.end().minus(s.start()).unit();
    Point w = c.centre().minus(s.start());
    double along = w.dot(u);
    double off = w.cross(u);
    double under = c.radius() * c.radius() - off * off;
    List<Crossing> found = new ArrayList<>();
    if (under < -REACH * c.radius()) {
      return found;
    }
    double half = Math.sqrt(Math.max(0, under));
    addIfOnBoth(found, s, c, s.start().plus(u.times(along - half)));
    if (half > REACH) {
      addIfOnBoth(found, s, c, s.start().plus(u.times(along + half)));
    }
    return found;
  }

  private static List<Crossing> arcs(Arc a, Arc b) {
    Point between = b.centre().minus(a.centre());
    double d = between.norm();
    double ra = a.radius();
    double rb = b.radius();
    List<Crossing> found = new ArrayList<>();
    if (d < REACH || d > ra + rb + REACH || d < Math.abs(ra - rb) - REACH) {
      return found;
    }
    Point u = between.times(1 / d);
    double along = (d * d + ra * ra - rb * rb) / (2 * d);
    double half = Math.sqrt(Math.max(0, ra * ra - along * along));
    Point foot = a.centre().plus(u.times(along));
    addIfOnBoth(found, a, b, foot.plus(u.left().times(half)));
    if (half > REACH) {
      addIfOnBoth(found, a, b, foot.minus(u.left().times(half)));
    }
    return found;
  }

  private static void addIfOnBoth(List<Crossing> found, Edge a, Edge b, Point p) {
    double t = a.nearest(p);
    double s = b.nearest(p);
    // Flat crossings lose figures: the square root of the reach is what is left of them.
    double slack = 1e-5;
    if (a.at(t).distance(p) <= slack && b.at(s).distance(p) <= slack) {
      found.add(new Crossing(p, t, s));
    }
  }
}
