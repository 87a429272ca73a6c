package org.jointwright.check.along;

import java.util.List;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Whether points lie on lines, by the rules' tolerance. */
public final class Nearness {
  /**
   * How far from a line a point still lies on it, inches: the tolerance on lengths, and 1/16 for
   * arcs that came as chords.
   */
  public static final double ON = Tolerance.LENGTH_INCHES + 1.0 / 16;

  private Nearness() {}

  /** Whether a point lies on one of the edges, within {@code by} inches. */
  public static boolean isOn(List<Edge> edges, Point p, double by) {
    for (Edge e : edges) {
      if (e.box().grown(by).holds(p) && e.distance(p) <= by) {
        return true;
      }
    }
    return false;
  }

  /** The distance from a point to the nearest edge, inches; infinite when there is none. */
  public static double distance(List<Edge> edges, Point p) {
    return edges.stream().mapToDouble(e -> e.distance(p)).min().orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * Whether a point lies beside an edge within {@code by} inches: its foot is on the edge and not
   * beyond an end.
   */
  public static boolean isBeside(Edge edge, Point p, double by) {
    if (!edge.box().grown(by).holds(p)) {
      return false;
    }
    double t = edge.nearest(p);
    if (edge.at(t).distance(p) > by) {
      return false;
    }
    if ((t > 0 && t < 1) || edge.length() == 0) {
      return true;
    }
    Point away = p.minus(edge.at(t));
    return away.dot(edge.direction(t)) * (t == 0 ? -1 : 1) <= 1e-9;
  }
}
