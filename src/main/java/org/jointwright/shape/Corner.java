package org.jointwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A corner of a closed chain of edges that has its inside on the left. Angles are taken from
 * tangents, so the joint between a line and an arc that runs on from it is no corner.
 *
 * @param at where it is
 * @param interior the interior angle, degrees in [0, 360]
 * @param before the number of the edge that arrives
 * @param after the number of the edge that leaves
 */
public record Corner(Point at, double interior, int before, int after) {
  /**
   * The corners of a chain, one for each edge, in order; edges shorter than {@code together} inches
   * are taken as part of one corner, their turns added.
   */
  public static List<Corner> of(List<Edge> edges, double together) {
    List<Integer> lasting = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).length() >= together) {
        lasting.add(i);
      }
    }
    List<Corner> corners = new ArrayList<>();
    for (int k = 0; k < lasting.size(); k++) {
      int before = lasting.get(k);
      int after = lasting.get((k + 1) % lasting.size());
      corners.add(between(edges, before, after));
    }
    return corners;
  }

  private static Corner between(List<Edge> edges, int before, int after) {
    Edge in = edges.get(before);
    Edge out = edges.get(after);
    double turn = 0;
    // Every small edge between the two adds its turn and the turn on to the next.
    Edge from = in;
    for (int i = (before + 1) % edges.size(); ; i = (i + 1) % edges.size()) {
      Edge to = edges.get(i);
      turn += turnAt(from, to);
      if (i == after) {
        break;
      }
      turn += to.turn();
      from = to;
    }
    return new Corner(out.start(), 180 - Math.toDegrees(turn), before, after);
  }

  /** The signed turn from the end of one edge to the start of the next, radians in (-pi, pi]. */
  static double turnAt(Edge from, Edge to) {
    Point u = from.direction(1);
    Point v = to.direction(0);
    double turn = Math.atan2(u.cross(v), u.dot(v));
    if (Math.abs(turn) < Math.PI - 1e-6) {
      return turn;
    }
    // A turn straight back has no sign of its own: ask the lines a little way from the corner.
    double step = Math.min(1, 0.1 * Math.min(from.length(), to.length()));
    Point a = from.at(1 - step / from.length()).minus(to.start());
    Point b = to.at(step / to.length()).minus(to.start());
    return b.cross(a) >= 0 ? Math.PI : -Math.PI;
  }
}
