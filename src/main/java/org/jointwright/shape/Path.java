package org.jointwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A chain of edges, each starting where the one before ends; open, or closed when it comes back.
 *
 * @param edges at least one
 */
public record Path(List<Edge> edges) {
  /** The noise of arithmetic, inches. */
  private static final double EXACT = 1e-9;

  /** Copies the list and refuses a broken or empty chain. */
  public Path {
    edges = List.copyOf(edges);
    if (edges.isEmpty()) {
      throw new IllegalArgumentException("a path needs an edge");
    }
    for (int i = 1; i < edges.size(); i++) {
      if (!edges.get(i - 1).end().equals(edges.get(i).start())) {
        throw new IllegalArgumentException(
            "edge " + i + " of the path does not start where the one before ends");
      }
    }
  }

  /** One edge as a path. */
  public static Path of(Edge edge) {
    return new Path(List.of(edge));
  }

  /** The straight path through two points. */
  public static Path straight(Point from, Point to) {
    return of(new Segment(from, to));
  }

  /** The straight pieces through {@code points}, two or more. */
  public static Path through(List<Point> points) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      edges.add(new Segment(points.get(i - 1), points.get(i)));
    }
    return new Path(edges);
  }

  /** Where it starts. */
  public Point start() {
    return edges.getFirst().start();
  }

  /** Where it ends. */
  public Point end() {
    return edges.getLast().end();
  }

  /** Whether it ends where it starts. */
  public boolean isClosed() {
    return start().equals(end());
  }

  /** Its length in inches. */
  public double length() {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  /** The point half way along it. */
  public Point middle() {
    return at(length() / 2);
  }

  /**
   * The point so far along it.
   *
   * @param distance inches; its start where negative, past its end in the direction that it ends in
   */
  public Point at(double distance) {
    double left = distance;
    for (Edge e : edges) {
      if (left <= e.length() + EXACT) {
        return e.at(e.length() > 0 ? Math.clamp(left / e.length(), 0, 1) : 0);
      }
      left -= e.length();
    }
    Edge last = edges.getLast();
    return last.end().plus(last.direction(1).times(left));
  }

  /** How far along it the point of it nearest to {@code p} is, inches. */
  public double along(Point p) {
    double before = 0;
    double best = 0;
    double nearest = Double.POSITIVE_INFINITY;
    for (Edge e : edges) {
      double t = e.nearest(p);
      double d = e.at(t).distance(p);
      if (d < nearest) {
        nearest = d;
        best = before + t * e.length();
      }
      before += e.length();
    }
    return best;
  }

  /** The distance from {@code p} to its nearest point, inches. */
  public double distance(Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge e : edges) {
      least = Math.min(least, e.distance(p));
    }
    return least;
  }

  /**
   * Whether {@code p} is no farther off it than {@code within} inches. What is far off is told by
   * the boxes round its edges, so that much can be asked of many.
   */
  public boolean isNear(Point p, double within) {
    for (Edge e : edges) {
      if (e.box().grown(within).holds(p) && e.distance(p) <= within) {
        return true;
      }
    }
    return false;
  }
}
