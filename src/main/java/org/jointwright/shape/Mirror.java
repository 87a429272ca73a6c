package org.jointwright.shape;

import java.util.List;

/**
 * A line to mirror at.
 *
 * @param at a point on it
 * @param along its direction, a unit vector
 */
public record Mirror(Point at, Point along) {
  /**
   * The line that lies nearest to points, by the squares of their distances.
   *
   * @param points two or more
   */
  public static Mirror through(List<Point> points) {
    double x = points.stream().mapToDouble(Point::x).average().orElseThrow();
    double y = points.stream().mapToDouble(Point::y).average().orElseThrow();
    Point middle = new Point(x, y);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Point q : points) {
      Point d = q.minus(middle);
      xx += d.x() * d.x();
      xy += d.x() * d.y();
      yy += d.y() * d.y();
    }
    double angle = 0.5 * Math.atan2(2 * xy, xx - yy);
    return new Mirror(middle, new Point(Math.cos(angle), Math.sin(angle)));
  }

  /** The mirror image of a point. */
  public Point of(Point p) {
    return at.plus(turned(p.minus(at)));
  }

  /** The mirror image of a direction. */
  public Point turned(Point direction) {
    return along.times(2 * direction.dot(along)).minus(direction);
  }

  /** The mirror image of an edge, from the image of its start; an arc turns the other way. */
  public Edge of(Edge edge) {
    return switch (edge) {
      case Segment s -> new Segment(of(s.start()), of(s.end()));
      case Arc a -> new Arc(of(a.start()), of(a.end()), of(a.centre()), -a.sweep());
    };
  }
}
