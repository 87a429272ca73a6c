package org.jointwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A chain of edges, each starting where the one before ends; open, or closed when it comes back.
 *
 * @param edges at least one
 */
public record Path(List<Edge> edges) {
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
    double left = length() / 2;
    for (Edge e : edges) {
      if (left <= e.length() && e.length() > 0) {
        return e.at(left / e.length());
      }
      left -= e.length();
    }
    return end();
  }

  /** The distance from {@code p} to its nearest point, inches. */
  public double distance(Point p) {
    return edges.stream().mapToDouble(e -> e.distance(p)).min().orElseThrow();
  }
}
