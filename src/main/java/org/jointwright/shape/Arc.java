package org.jointwright.shape;

/**
 * A circular arc.
 *
 * @param start where it starts
 * @param end where it ends
 * @param centre the circle's middle
 * @param sweep the signed angle it turns through, radians, counter-clockwise positive, never 0 and
 *     under a full turn
 */
public record Arc(Point start, Point end, Point centre, double sweep) implements Edge {
  /** Refuses a sweep that is zero, not finite, or a full turn and more. */
  public Arc {
    if (!(Math.abs(sweep) > 0) || !(Math.abs(sweep) < 2 * Math.PI)) {
      throw new IllegalArgumentException("an arc turns by more than 0 and less than a full turn");
    }
  }

  /**
   * The edge from {@code start} through {@code via} to {@code end}: an arc, or the straight segment
   * when the bow is too flat to matter (under a millionth of the chord).
   */
  public static Edge through(Point start, Point via, Point end) {
    Point a = via.minus(start);
    Point b = end.minus(start);
    double cross = a.cross(b);
    double chord = b.norm();
    if (Math.abs(cross) <= 1e-6 * chord * chord) {
      return new Segment(start, end);
    }
    double a2 = a.dot(a);
    double b2 = b.dot(b);
    Point centre =
        start.plus(
            new Point(
                (b.y() * a2 - a.y() * b2) / (2 * cross), (a.x() * b2 - b.x() * a2) / (2 * cross)));
    double from = start.minus(centre).angle();
    double to = end.minus(centre).angle();
    // Through the via point on its right hand the arc runs counter-clockwise, else clockwise.
    double sweep = cross > 0 ? positive(to - from) : -positive(from - to);
    return new Arc(start, end, centre, sweep);
  }

  private static double positive(double angle) {
    double a = angle % (2 * Math.PI);
    return a <= 0 ? a + 2 * Math.PI : a;
  }

  /** The radius in inches. */
  public double radius() {
    return start.distance(centre);
  }

  /** The point half way along it. */
  public Point middle() {
    return at(0.5);
  }

  @Override
  public double length() {
    return radius() * Math.abs(sweep);
  }

  @Override
  public Point at(double t) {
    if (t == 0) {
      return start;
    }
    if (t == 1) {
      return end;
    }
    return centre.plus(start.minus(centre).turned(sweep * t));
  }

  @Override
  public Point direction(double t) {
    Point spoke = start.minus(centre).turned(sweep * t).unit();
    return sweep > 0 ? spoke.left() : spoke.left().times(-1);
  }

  @Override
  public Arc reversed() {
    return new Arc(end, start, centre, -sweep);
  }

  @Override
  public Arc part(double from, double to) {
    return new Arc(at(from), at(to), centre, sweep * (to - from));
  }

  @Override
  public double nearest(Point p) {
    Point spoke = p.minus(centre);
    if (spoke.norm() > 0) {
      double from = start.minus(centre).angle();
      double along = sweep > 0 ? positive(spoke.angle() - from) : positive(from - spoke.angle());
      if (along >= 2 * Math.PI) {
        along = 0;
      }
      if (along <= Math.abs(sweep)) {
        return along / Math.abs(sweep);
      }
    }
    return p.distance(start) <= p.distance(end) ? 0 : 1;
  }

  @Override
  public Box box() {
    Box box = Box.of(start, end);
    double r = radius();
    for (int quarter = 0; quarter < 4; quarter++) {
      Point extreme = centre.plus(new Point(r, 0).turned(quarter * Math.PI / 2));
      double t = nearest(extreme);
      if (t > 0 && t < 1) {
        box = box.with(extreme);
      }
    }
    return box;
  }

  @Override
  public double turn() {
    return sweep;
  }
}
