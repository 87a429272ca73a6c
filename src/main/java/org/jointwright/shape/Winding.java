package org.jointwright.shape;

/** How far an edge turns about a point. */
final class Winding {
  private Winding() {}

  /** The signed angle that {@code e} turns through as seen from {@code p}, radians. */
  static double about(Edge e, Point p) {
    return switch (e) {
      case Segment s -> chord(s.start(), s.end(), p);
      case Arc a -> {
        // The chord's angle, and a full turn when p lies between chord and arc.
        double angle = chord(a.start(), a.end(), p);
        if (p.distance(a.centre()) >= a.radius()) {
          yield angle;
        }
        // The side is taken as the angle takes it, so that rounding cannot set them at odds.
        double side = a.start().minus(p).cross(a.end().minus(p));
        if (side == 0) {
          // On the chord the half turn has no sign of its own: it has the arc's.
          yield Math.copySign(Math.PI, a.sweep());
        }
        boolean arcSide = a.sweep() > 0 ? side < 0 : side > 0;
        yield arcSide ? angle + Math.copySign(2 * Math.PI, a.sweep()) : angle;
      }
    };
  }

  private static double chord(Point from, Point to, Point p) {
    Point u = from.minus(p);
    Point v = to.minus(p);
    return Math.atan2(u.cross(v), u.dot(v));
  }
}
