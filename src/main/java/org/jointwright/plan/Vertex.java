package org.jointwright.plan;

import java.util.Optional;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * A vertex of an outline, with what its leaving edge is.
 *
 * @param at where it stands
 * @param via a point on the arc that leaves it; empty for a straight edge
 * @param kept what the file said besides
 */
public record Vertex(Point at, Optional<Point> via, Kept kept) {
  /** A vertex with a straight edge leaving it. */
  public static Vertex at(Point at) {
    return new Vertex(at, Optional.empty(), Kept.NOTHING);
  }

  /** A vertex with an arc leaving it through {@code via}. */
  public static Vertex arc(Point at, Point via) {
    return new Vertex(at, Optional.of(via), Kept.NOTHING);
  }

  /** The edge from here to {@code next}. */
  public Edge edgeTo(Point next) {
    return via.map(v -> Arc.through(at, v, next)).orElseGet(() -> new Segment(at, next));
  }

  /** This vertex at another place, its arc's bow kept by {@code movedVia}. */
  public Vertex moved(Point to, Optional<Point> movedVia) {
    return new Vertex(to, movedVia, kept);
  }
}
