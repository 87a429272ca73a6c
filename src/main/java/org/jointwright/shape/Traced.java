package org.jointwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * Arcs found again in lines that trace them with short chords, as plans from other programs do.
 *
 * <p>Points within 1/16 in of one circle, turning one way, with chords that leave the circle by
 * little more than that, are its arc; points that are none and stand within 1/2 in of the line
 * between the ends are that line. What is neither stays as it is.
 */
public final class Traced {
  /** How far a traced point may stand from its circle or line, inches. */
  private static final double OFF = 1.0 / 16;

  /** A path whose points stand no farther from the line between its ends is straight, inches. */
  private static final double HARDLY_BENT = 0.5;

  /** How far a chord's middle may stand from the circle, inches. */
  private static final double SAGITTA = 2 * OFF + 0.012;

  /** Fewer chords than this are no arc where other pieces go on from them. */
  private static final int LEAST_CHORDS = 3;

  private static final double LARGEST_RADIUS = 1.2e6;

  private Traced() {}

  /** A path with its traced arcs and lines found again. */
  public static Path path(Path path) {
    if (path.edges().size() == 1 || path.edges().stream().anyMatch(e -> e instanceof Arc)) {
      return path;
    }
    List<Point> points =
        path.edges().stream().map(Edge::start).collect(ArrayList::new, List::add, List::addAll);
    points.add(path.end());
    if (path.isClosed()) {
      return new Path(closed(points));
    }
    if (straight(points, OFF)) {
      return Path.straight(path.start(), path.end());
    }
    Edge whole = arc(points, 0, points.size() - 1);
    if (whole instanceof Arc) {
      return Path.of(whole);
    }
    return straight(points, HARDLY_BENT)
        ? Path.straight(path.start(), path.end())
        : new Path(pieces(points));
  }

  /** A ring with its traced arcs found again; it may start elsewhere. */
  public static Ring ring(Ring ring) {
    if (ring.edges().size() < 4 || ring.edges().stream().anyMatch(e -> e instanceof Arc)) {
      return ring;
    }
    List<Point> points = new ArrayList<>(ring.vertices());
    points.add(points.getFirst());
    return new Ring(closed(points));
  }

  private static List<Edge> closed(List<Point> points) {
    int n = points.size() - 1;
    if (n >= 8) {
      Edge first = arc(points, 0, n / 2);
      Edge second = arc(points, n / 2, n);
      if (first instanceof Arc a
          && second instanceof Arc b
          && a.centre().distance(b.centre()) <= 2 * OFF
          && a.sweep() * b.sweep() > 0) {
        return List.of(first, second);
      }
    }
    return pieces(fromSharpest(points));
  }

  /** The closed chain begun at its sharpest corner, so that no arc is cut in two. */
  private static List<Point> fromSharpest(List<Point> points) {
    int n = points.size() - 1;
    int best = 0;
    double most = -1;
    for (int i = 0; i < n; i++) {
      Point u = points.get(i).minus(points.get((i + n - 1) % n));
      Point v = points.get(i + 1).minus(points.get(i));
      double turn = Math.abs(Math.atan2(u.cross(v), u.dot(v)));
      if (turn > most + 1e-9) {
        most = turn;
        best = i;
      }
    }
    List<Point> turned = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      turned.add(points.get((best + i) % n));
    }
    return turned;
  }

  private static List<Edge> pieces(List<Point> points) {
    List<Edge> edges = new ArrayList<>();
    int from = 0;
    while (from < points.size() - 1) {
      int to = from + 1;
      Edge edge = new Segment(points.get(from), points.get(to));
      for (int j = from + LEAST_CHORDS; j < points.size(); j++) {
        Edge longer = arc(points, from, j);
        if (!(longer instanceof Arc)) {
          break;
        }
        to = j;
        edge = longer;
      }
      edges.add(edge);
      from = to;
    }
    return edges;
  }

  private static boolean straight(List<Point> points, double off) {
    if (points.getFirst().equals(points.getLast())) {
      return false;
    }
    Segment line = new Segment(points.getFirst(), points.getLast());
    double last = 0;
    for (Point p : points) {
      double t = line.nearest(p);
      if (line.distance(p) > off || t < last - 1e-6) {
        return false;
      }
      last = t;
    }
    return true;
  }

  /** The arc that the points trace from one to another, or the straight line where they do not. */
  private static Edge arc(List<Point> points, int from, int to) {
    Segment line = new Segment(points.get(from), points.get(to));
    Point middle = points.get((from + to) / 2);
    if (to - from < 2
        || line.length() == 0
        || straight(points.subList(from, to + 1), OFF)
        || !(Arc.through(line.start(), middle, line.end()) instanceof Arc arc)
        || arc.radius() > LARGEST_RADIUS) {
      return line;
    }
    double r = arc.radius();
    for (int i = from; i < to; i++) {
      Point a = points.get(i).minus(arc.centre());
      Point b = points.get(i + 1).minus(arc.centre());
      double turn = Math.atan2(a.cross(b), a.dot(b));
      boolean onward = turn * arc.sweep() > 0;
      boolean near = Math.abs(b.norm() - r) <= OFF;
      if (!onward || !near || r * (1 - Math.cos(turn / 2)) > SAGITTA) {
        return line;
      }
    }
    return arc;
  }
}
