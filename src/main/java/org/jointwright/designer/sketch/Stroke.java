package org.jointwright.designer.sketch;

import java.util.Optional;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * The next edge of an outline that is being drawn.
 *
 * @param from where it starts
 * @param via a point on it where it is an arc
 * @param to where it ends
 * @param closes whether it ends at the first corner
 */
public record Stroke(Point from, Optional<Point> via, Point to, boolean closes) {
  /** A straight stroke. */
  public static Stroke straight(Point from, Point to, boolean closes) {
    return new Stroke(from, Optional.empty(), to, closes);
  }

  /** The vertex it leaves from. */
  public Vertex vertex() {
    return via.map(v -> Vertex.arc(from, v)).orElseGet(() -> Vertex.at(from));
  }

  /** The edge that it will be. */
  public Edge edge() {
    return vertex().edgeTo(to);
  }

  /** Whether it has no length worth placing: under a sixteenth of an inch. */
  public boolean isNothing() {
    return from.distance(to) < 1.0 / 16;
  }
}
