package org.jointwright.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A place where a ring crosses or touches itself.
 *
 * @param first the number of one edge
 * @param second the number of the other, higher
 * @param at where
 */
public record SelfCrossing(int first, int second, Point at) {
  /**
   * The place with the lowest edge numbers, if there is any. Edges that meet in a corner may lie
   * along each other there (an arc that leaves a line on a tangent does), but not end on each
   * other.
   *
   * @param same points nearer than this count as one, inches
   */
  public static Optional<SelfCrossing> of(Ring ring, double same) {
    List<Edge> edges = ring.edges();
    List<Box> boxes = edges.stream().map(e -> e.box().grown(same)).toList();
    List<Integer> byLeft = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      byLeft.add(i);
    }
    byLeft.sort(Comparator.comparingDouble(i -> boxes.get(i).minX()));
    List<SelfCrossing> found = new ArrayList<>();
    for (int a = 0; a < byLeft.size(); a++) {
      Box box = boxes.get(byLeft.get(a));
      for (int b = a + 1; b < byLeft.size(); b++) {
        Box other = boxes.get(byLeft.get(b));
        if (other.minX() > box.maxX()) {
          break;
        }
        if (box.meets(other)) {
          int i = Math.min(byLeft.get(a), byLeft.get(b));
          int j = Math.max(byLeft.get(a), byLeft.get(b));
          between(edges, i, j, same).ifPresent(found::add);
        }
      }
    }
    return found.stream()
        .min(Comparator.comparingInt(SelfCrossing::first).thenComparingInt(SelfCrossing::second));
  }

  private static Optional<SelfCrossing> between(List<Edge> edges, int i, int j, double same) {
    Edge a = edges.get(i);
    Edge b = edges.get(j);
    List<Point> shared = new ArrayList<>();
    if (j == i + 1) {
      shared.add(b.start());
    }
    if (i == 0 && j == edges.size() - 1) {
      shared.add(a.start());
    }
    return meetings(a, b, same).stream()
        .filter(p -> shared.stream().allMatch(s -> s.distance(p) > nearCorner(a, b)))
        .findFirst()
        .map(p -> new SelfCrossing(i, j, p));
  }

  /** How near their corner two edges may run along each other: tangents part slowly. */
  private static double nearCorner(Edge a, Edge b) {
    return Math.min(0.5, 0.5 * Math.min(a.length(), b.length()));
  }

  private static List<Point> meetings(Edge a, Edge b, double same) {
    List<Point> met = new ArrayList<>();
    Crossing.of(a, b).forEach(c -> met.add(c.at()));
    for (Point p : List.of(a.start(), a.end())) {
      if (b.distance(p) <= same) {
        met.add(p);
      }
    }
    for (Point p : List.of(b.start(), b.end())) {
      if (a.distance(p) <= same) {
        met.add(p);
      }
    }
    return met;
  }
}
