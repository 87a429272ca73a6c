package org.jointwright.plan;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * A closed outline by its vertices, counter-clockwise; edge {@code i} leaves vertex {@code i}.
 *
 * @param vertices two at least (two arcs make a circle), three where all edges are straight
 */
public record Outline(List<Vertex> vertices) {
  /** Copies the list and refuses fewer than two vertices. */
  public Outline {
    vertices = List.copyOf(vertices);
    if (vertices.size() < 2) {
      throw new IllegalArgumentException("an outline needs vertices, not " + vertices.size());
    }
  }

  /** An outline of straight edges. */
  public static Outline of(List<Point> points) {
    return new Outline(points.stream().map(Vertex::at).toList());
  }

  /** The outline as a ring; edge {@code i} of the ring is edge {@code i} of the outline. */
  public Ring ring() {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < vertices.size(); i++) {
      edges.add(vertices.get(i).edgeTo(vertices.get((i + 1) % vertices.size()).at()));
    }
    return new Ring(edges);
  }
}
