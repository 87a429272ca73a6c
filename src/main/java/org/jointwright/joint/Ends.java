package org.jointwright.joint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** Which of many lines end near a place: a yard has tens of thousands of them. */
final class Ends {
  /** The side of the squares into which the plan is parted, inches. */
  private static final double SQUARE = 1;

  private record Square(long x, long y) {}

  private final Map<Square, List<Integer>> ends = new HashMap<>();

  /** Notes the ends of line number {@code i}. */
  void put(int i, Path path) {
    at(path.start()).add(i);
    at(path.end()).add(i);
  }

  /** Forgets them. */
  void remove(Integer i, Path path) {
    at(path.start()).remove(/* element */ i);
    at(path.end()).remove(/* element */ i);
  }

  private List<Integer> at(Point p) {
    return ends.computeIfAbsent(square(p, 0, 0), s -> new ArrayList<>());
  }

  private static Square square(Point p, int right, int up) {
    return new Square(
        (long) Math.floor(p.x() / SQUARE) + right, (long) Math.floor(p.y() / SQUARE) + up);
  }

  /**
   * The numbers of the lines that may end within {@link #SQUARE} of either end, the least first.
   */
  Set<Integer> near(Path path) {
    TreeSet<Integer> near = new TreeSet<>();
    for (Point p : List.of(path.start(), path.end())) {
      for (int right = -1; right <= 1; right++) {
        for (int up = -1; up <= 1; up++) {
          near.addAll(ends.getOrDefault(square(p, right, up), List.of()));
        }
      }
    }
    return near;
  }
}
