package org.jointwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Which vertices of a ring are corners. */
final class RingCorners {
  /** A turn of more than this is a corner; radians. */
  private static final double TURN = Math.toRadians(5);

  private RingCorners() {}

  /**
   * The corners of a ring that runs counter-clockwise, as numbers of the edges that leave them, the
   * lower left one first. A line that bends by small turns gets a corner wherever it has turned 5
   * degrees in all, so that every side is as good as straight.
   */
  static List<Integer> of(Ring ring) {
    int n = ring.edges().size();
    List<Integer> hard = IntStream.range(0, n).filter(i -> isHard(ring, i)).boxed().toList();
    int start = lowerLeft(ring, hard.isEmpty() ? IntStream.range(0, n).boxed().toList() : hard);
    List<Integer> corners = new ArrayList<>(List.of(start));
    Point heading = ring.edges().get(start).direction(0);
    for (int k = 1; k < n; k++) {
      int i = (start + k) % n;
      Point leaving = ring.edges().get(i).direction(0);
      if (isHard(ring, i) || angle(heading, leaving) > TURN) {
        corners.add(i);
        heading = leaving;
      }
    }
    return corners;
  }

  private static boolean isHard(Ring ring, int i) {
    Edge before = ring.edges().get(Math.floorMod(i - 1, ring.edges().size()));
    Edge after = ring.edges().get(i);
    return before instanceof Arc
        || after instanceof Arc
        || angle(before.direction(1), after.direction(0)) > TURN;
  }

  private static double angle(Point u, Point v) {
    return Math.abs(Math.atan2(u.cross(v), u.dot(v)));
  }

  private static int lowerLeft(Ring ring, List<Integer> among) {
    // Rounded, so that noise far behind the point does not choose between equals.
    Comparator<Integer> byPlace =
        Comparator.comparingLong(
            i -> {
              Point p = ring.edges().get(i).start();
              return Math.round(16 * (p.x() + p.y()));
            });
    return among.stream()
        .min(byPlace.thenComparingDouble(i -> ring.edges().get(i).start().x()))
        .orElseThrow();
  }
}
