package org.jointwright.check.face;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.along.Nearness;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Box-outs that are round though made of straight pieces: eight sides or more within 1/2 in of one
 * circle, or four points or more where the slab's edge cuts the circle off.
 */
public final class RoundBoxOuts {
  private static final int LEAST_SIDES = 8;
  private static final int LEAST_POINTS = 4;
  private static final double LARGEST_RADIUS = 600;
  private static final double MOST_TURN = Math.toRadians(45 + Tolerance.ANGLE.value());

  private RoundBoxOuts() {}

  /**
   * Whether a box-out is round.
   *
   * @param ring the box-out
   * @param edges the edges of the slab and its openings; sides along them do not count
   */
  public static boolean isRound(Ring ring, List<Edge> edges) {
    if (ring.edges().stream().anyMatch(e -> e instanceof Arc)) {
      return false;
    }
    List<List<Point>> chains = freeChains(ring, edges);
    boolean whole = chains.size() == 1 && chains.getFirst().size() == ring.edges().size() + 1;
    if (whole && ring.edges().size() < LEAST_SIDES) {
      return false;
    }
    return !chains.isEmpty() && chains.stream().allMatch(RoundBoxOuts::isOnOneCircle);
  }

  /** The points of each unbroken run of sides that are not along the slab's own edges. */
  private static List<List<Point>> freeChains(Ring ring, List<Edge> edges) {
    int n = ring.edges().size();
    boolean[] free = new boolean[n];
    int start = 0;
    for (int i = 0; i < n; i++) {
      free[i] = !isAlong(ring.edges().get(i), edges);
    }
    while (start < n && free[start]) {
      start++;
    }
    List<List<Point>> chains = new ArrayList<>();
    List<Point> chain = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Edge side = ring.edges().get((start + k) % n);
      if (free[(start + k) % n]) {
        if (chain.isEmpty()) {
          chains.add(chain);
          chain.add(side.start());
        }
        chain.add(side.end());
      } else {
        chain = new ArrayList<>();
      }
    }
    return chains;
  }

  private static boolean isAlong(Edge side, List<Edge> edges) {
    return edges.stream()
        .anyMatch(
            e ->
                java.util.stream.IntStream.rangeClosed(0, 4)
                    .allMatch(i -> e.distance(side.at(i / 4.0)) <= Nearness.ON));
  }

  private static boolean isOnOneCircle(List<Point> points) {
    if (points.size() < LEAST_POINTS) {
      return false;
    }
    boolean closed = points.getFirst().equals(points.getLast());
    int last = closed ? (points.size() - 1) * 2 / 3 : points.size() - 1;
    if (!(Arc.through(points.getFirst(), points.get(last / 2), points.get(last)) instanceof Arc arc)
        || arc.radius() > LARGEST_RADIUS) {
      return false;
    }
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1).minus(arc.centre());
      Point b = points.get(i).minus(arc.centre());
      double turn = Math.atan2(a.cross(b), a.dot(b)) * Math.signum(arc.sweep());
      boolean near = Math.abs(b.norm() - arc.radius()) <= Tolerance.LENGTH_INCHES;
      if (!near || turn <= 0 || turn > MOST_TURN) {
        return false;
      }
    }
    return true;
  }
}
