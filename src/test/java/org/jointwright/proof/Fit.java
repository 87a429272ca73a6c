package org.jointwright.proof;

import java.util.List;
import java.util.function.UnaryOperator;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Lays one set of points on another by turning and moving it, by least squares. */
final class Fit {
  private Fit() {}

  static UnaryOperator<Point> rigid(List<Point> from, List<Point> to) {
    Point a = middle(from);
    Point b = middle(to);
    double cos = 0;
    double sin = 0;
    for (int i = 0; i < from.size(); i++) {
      Point u = from.get(i).minus(a);
      Point v = to.get(i).minus(b);
      cos += u.dot(v);
      sin += u.cross(v);
    }
    double angle = Math.atan2(sin, cos);
    return p -> b.plus(p.minus(a).turned(angle));
  }

  private static Point middle(List<Point> points) {
    Point sum = new Point(0, 0);
    for (Point p : points) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / points.size());
  }

  static Edge moved(Edge e, UnaryOperator<Point> move) {
    return switch (e) {
      case Segment s -> new Segment(move.apply(s.start()), move.apply(s.end()));
      case Arc a ->
          new Arc(move.apply(a.start()), move.apply(a.end()), move.apply(a.centre()), a.sweep());
    };
  }
}
