package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Lines beside a line: the edges of filler, the far side of a wall. */
final class Offsets {
  private Offsets() {}

  /** The path moved by {@code by} to the left of its heading; corners are mitred. */
  static List<Edge> of(Path path, double by) {
    List<Edge> moved = path.edges().stream().map(e -> moved(e, by)).toList();
    List<Edge> out = new ArrayList<>();
    int n = moved.size();
    for (int i = 0; i < n; i++) {
      Edge e = moved.get(i);
      boolean closed = path.isClosed() && n > 1;
      Point start = i > 0 || closed ? meet(moved.get((i + n - 1) % n), e, false) : e.start();
      Point end = i < n - 1 || closed ? meet(e, moved.get((i + 1) % n), true) : e.end();
      out.add(between(e, start, end));
    }
    return closeGaps(out);
  }

  private static List<Edge> closeGaps(List<Edge> edges) {
    List<Edge> out = new ArrayList<>();
    for (Edge e : edges) {
      if (!out.isEmpty() && !out.getLast().end().equals(e.start())) {
        Point last = out.getLast().end();
        out.add(new Segment(last, e.start()));
      }
      out.add(e);
    }
    return out;
  }

  private static Edge moved(Edge e, double by) {
    return switch (e) {
      case Segment s -> {
        Point d = s.direction(0).left().times(by);
        yield new Segment(s.start().plus(d), s.end().plus(d));
      }
      case Arc a -> {
        double factor = Math.max(1e-3, 1 - Math.signum(a.sweep()) * by / a.radius());
        yield new Arc(
            a.centre().plus(a.start().minus(a.centre()).times(factor)),
            a.centre().plus(a.end().minus(a.centre()).times(factor)),
            a.centre(),
            a.sweep());
      }
    };
  }

  private static Edge between(Edge e, Point start, Point end) {
    return e instanceof Segment ? new Segment(start, end) : e;
  }

  /** Where two moved edges meet: mitred between straight ones, else where the arc ends. */
  private static Point meet(Edge before, Edge after, boolean atEnd) {
    if (before instanceof Segment a && after instanceof Segment b) {
      Point u = a.direction(0);
      Point v = b.direction(0);
      double cross = u.cross(v);
      if (Math.abs(cross) > 0.05) {
        double t = b.start().minus(a.end()).cross(v) / cross;
        return a.end().plus(u.times(t));
      }
    }
    return atEnd ? before.end() : after.start();
  }
}
