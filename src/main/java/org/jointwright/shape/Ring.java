package org.jointwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed line of edges, each starting where the one before ends.
 *
 * @param edges at least two; the last ends where the first starts
 */
public record Ring(List<Edge> edges) {
  /** Copies the list and refuses an open or empty ring. */
  public Ring {
    edges = List.copyOf(edges);
    if (edges.size() < 2) {
      throw new IllegalArgumentException("a ring needs two edges or more, not " + edges.size());
    }
    for (int i = 0; i < edges.size(); i++) {
      if (!edges.get(i).end().equals(edges.get((i + 1) % edges.size()).start())) {
        throw new IllegalArgumentException("edge " + i + " of the ring does not meet the next");
      }
    }
  }

  /** The ring of straight edges through {@code points}, the first not repeated. */
  public static Ring of(List<Point> points) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      edges.add(new Segment(points.get(i), points.get((i + 1) % points.size())));
    }
    return new Ring(edges);
  }

  /** The signed area in square inches; positive when it runs counter-clockwise. */
  public double signedArea() {
    // Measured from the first point, so that a slab far from the origin loses no figures.
    Point origin = edges.getFirst().start();
    double sum = 0;
    for (Edge e : edges) {
      sum +=
          switch (e) {
            case Segment s -> s.start().minus(origin).cross(s.end().minus(origin));
            case Arc a ->
                a.centre().minus(origin).cross(a.end().minus(a.start()))
                    + a.radius() * a.radius() * a.sweep();
          };
    }
    return sum / 2;
  }

  /** The area in square inches, never negative. */
  public double area() {
    return Math.abs(signedArea());
  }

  /** The length all round, inches. */
  public double perimeter() {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  /** The same ring run the other way. */
  public Ring reversed() {
    return new Ring(edges.reversed().stream().map(Edge::reversed).toList());
  }

  /** This ring, counter-clockwise. */
  public Ring counterClockwise() {
    return signedArea() < 0 ? reversed() : this;
  }

  /** The starting points of its edges, in order. */
  public List<Point> vertices() {
    return edges.stream().map(Edge::start).toList();
  }

  /** The smallest box that holds it. */
  public Box box() {
    Box box = edges.getFirst().box();
    for (int i = 1; i < edges.size(); i++) {
      box = box.with(edges.get(i).box());
    }
    return box;
  }

  /**
   * Whether {@code p} lies inside. A point on the line itself may be told either way: ask {@link
   * #distance} first where that matters.
   */
  public boolean contains(Point p) {
    // Most rings that are asked are far away, and angles are dear.
    if (!box().holds(p)) {
      return false;
    }
    double winding = 0;
    for (Edge e : edges) {
      winding += Winding.about(e, p);
    }
    return Math.abs(winding) > Math.PI;
  }

  /** The distance from {@code p} to the nearest point of the line, inches. */
  public double distance(Point p) {
    return edges.stream().mapToDouble(e -> e.distance(p)).min().orElseThrow();
  }
}
