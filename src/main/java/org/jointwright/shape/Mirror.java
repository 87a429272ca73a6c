package org.jointwright.shape;

/**
 * A line to mirror at.
 *
 * @param at a point on it
 * @param along its direction, a unit vector
 */
public record Mirror(Point at, Point along) {
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
