package org.jointwright.shape;

/** A straight edge. */
public record Segment(Point start, Point end) implements Edge {
  @Override
  public double length() {
    return start.distance(end);
  }

  @Override
  public Point at(double t) {
    return t == 1 ? end : start.towards(end, t);
  }

  @Override
  public Point direction(double t) {
    return end.minus(start).unit();
  }

  @Override
  public Segment reversed() {
    return new Segment(end, start);
  }

  @Override
  public Segment part(double from, double to) {
    return new Segment(at(from), at(to));
  }

  @Override
  public double nearest(Point p) {
    Point d = end.minus(start);
    double n = d.dot(d);
    return n == 0 ? 0 : Math.clamp(p.minus(start).dot(d) / n, 0, 1);
  }

  @Override
  public Box box() {
    return Box.of(start, end);
  }

  @Override
  public double turn() {
    return 0;
  }
}
