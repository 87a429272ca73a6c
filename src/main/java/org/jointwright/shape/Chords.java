package org.jointwright.shape;

import java.util.ArrayList;
import java.util.List;

/** Arcs taken as chords, for what can only work with straight lines. */
public final class Chords {
  private Chords() {}

  /** The number of chords that keep an arc's sagitta at most {@code error} inches. */
  public static int count(Arc arc, double error) {
    double r = arc.radius();
    if (error >= r) {
      return Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / (Math.PI / 2)));
    }
    double step = 2 * Math.acos(1 - error / r);
    return Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / step));
  }

  /**
   * The points along an edge from its start to just before its end, arcs as chords within {@code
   * error} inches.
   */
  public static List<Point> along(Edge edge, double error) {
    return switch (edge) {
      case Segment s -> List.of(s.start());
      case Arc a -> {
        int n = count(a, error);
        List<Point> points = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
          points.add(a.at((double) i / n));
        }
        yield points;
      }
    };
  }

  /** The points round a ring, the first not repeated. */
  public static List<Point> round(Ring ring, double error) {
    List<Point> points = new ArrayList<>();
    for (Edge e : ring.edges()) {
      points.addAll(along(e, error));
    }
    return points;
  }

  /** The points of a path, both ends included. */
  public static List<Point> of(Path path, double error) {
    List<Point> points = new ArrayList<>();
    for (Edge e : path.edges()) {
      points.addAll(along(e, error));
    }
    points.add(path.end());
    return points;
  }
}
