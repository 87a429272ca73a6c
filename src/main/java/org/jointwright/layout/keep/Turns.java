package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;

/**
 * By how much joints may turn: one that was square to edges or parallel to them turns no less than
 * the edge that turned least, and no more than the one that turned most.
 */
final class Turns {
  /** The sine up to which a joint is square or parallel: marks of two sides seldom agree better. */
  private static final double ALIGNED = Math.sin(Math.toRadians(0.15));

  /** Shorter edges give no direction unless a joint ends there, inches. */
  private static final double LONG = 36;

  /** An end this near to a corner stands at it, inches. */
  static final double AT_CORNER = 0.02;

  /**
   * How far a joint may turn.
   *
   * @param least radians, counter-clockwise
   * @param most radians, counter-clockwise
   */
  record Range(double least, double most) {
    double clamp(double turn) {
      return Math.clamp(turn, least, most);
    }

    /** Whether a turn is that of one of the edges. */
    boolean isAtEnd(double turn) {
      return Math.min(Math.abs(turn - least), Math.abs(turn - most)) < 1e-6;
    }
  }

  private final List<Stretch> stretches;
  private final Map<Point, List<Integer>> corners = new HashMap<>();

  Turns(List<Stretch> stretches) {
    this.stretches = stretches;
    for (int i = 0; i < stretches.size(); i++) {
      Stretch s = stretches.get(i);
      for (Point p : List.of(s.before().getFirst().start(), s.before().getLast().end())) {
        corners.computeIfAbsent(p, k -> new ArrayList<>()).add(i);
      }
    }
  }

  /** The range for a straight strand; empty where it was aligned with nothing. */
  Optional<Range> of(Strand strand, boolean pinned) {
    Set<Integer> touched = new TreeSet<>();
    for (boolean last : new boolean[] {false, true}) {
      touched.addAll(at(strand.end(last)));
    }
    boolean round = touched.stream().anyMatch(i -> isRound(stretches.get(i)));
    Set<Integer> asked = new TreeSet<>(touched);
    if (touched.isEmpty()) {
      for (int i = 0; i < stretches.size(); i++) {
        asked.add(i);
      }
    } else if (!round && !pinned) {
      touched.forEach(i -> asked.addAll(besides(i)));
    }
    Point u = strand.direction();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i : asked) {
      Stretch s = stretches.get(i);
      if (s.isStraight() && (touched.contains(i) || s.lengthBefore() >= LONG)) {
        Point d = direction(s.before().getFirst().start(), s.before().getFirst().end());
        if (Math.min(Math.abs(d.cross(u)), Math.abs(d.dot(u))) <= ALIGNED) {
          Point e = direction(s.now().getFirst().start(), s.now().getFirst().end());
          double turn = Math.atan2(d.cross(e), d.dot(e));
          least = Math.min(least, turn);
          most = Math.max(most, turn);
        }
      }
    }
    return least > most ? Optional.empty() : Optional.of(new Range(least, most));
  }

  private static Point direction(Point from, Point to) {
    return to.minus(from).unit();
  }

  private static boolean isRound(Stretch s) {
    return s.before().stream().anyMatch(e -> e instanceof Arc);
  }

  /** The stretches that a place stood on. */
  private List<Integer> at(Node node) {
    if (!node.isOnRim()) {
      return List.of();
    }
    Stretch s = stretches.get(node.stretch());
    if (node.along() < AT_CORNER) {
      return corners.getOrDefault(s.before().getFirst().start(), List.of());
    }
    if (s.lengthBefore() - node.along() < AT_CORNER) {
      return corners.getOrDefault(s.before().getLast().end(), List.of());
    }
    return List.of(node.stretch());
  }

  private List<Integer> besides(int stretch) {
    Stretch s = stretches.get(stretch);
    List<Integer> found = new ArrayList<>();
    found.addAll(corners.getOrDefault(s.before().getFirst().start(), List.of()));
    found.addAll(corners.getOrDefault(s.before().getLast().end(), List.of()));
    return found;
  }
}
