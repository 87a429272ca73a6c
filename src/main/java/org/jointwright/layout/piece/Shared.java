package org.jointwright.layout.piece;

import org.jointwright.practice.Angles;
import org.jointwright.practice.Corners;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Inside corners that need no joint of their own: within 6 in of each other they count as one, and
 * a concave arc of a radius under 6 in is one corner with its edge rounded off.
 */
final class Shared {
  private static final double TOGETHER = Corners.TOGETHER.value().inches();
  private static final double ROUNDED_OFF = Corners.ROUNDED_OFF.value().inches() - Limits.SHADE;
  private static final double INSIDE = Angles.INSIDE.value();
  private static final double SAME = Limits.SHADE;

  private Shared() {}

  /** Whether edge {@code i} is an inside corner's edge rounded off. */
  static boolean isRoundedOff(Loop loop, int i) {
    return loop.isHard(i)
        && loop.edge(i) instanceof Arc a
        && a.sweep() < 0
        && a.radius() < ROUNDED_OFF;
  }

  /** Whether a joint serves another inside corner so near that it serves this one too. */
  static boolean isServed(Ground ground, Loop loop, int first, int last) {
    Point at = loop.edge(first).start();
    return isServedAlong(ground, loop, at, last, 1)
        || isServedAlong(ground, loop, at, first - 1, -1);
  }

  /** Goes along the slab's own edge until a joint ends there. */
  private static boolean isServedAlong(Ground ground, Loop loop, Point at, int from, int way) {
    for (int i = from, n = 0; n < loop.size() && loop.isHard(i); i += way, n++) {
      Edge e = loop.edge(i);
      Point end = way > 0 ? e.end() : e.start();
      if (end.distance(at) > TOGETHER) {
        return false;
      }
      if (!loop.isHard(i + way)) {
        return isBetween(ground, at, end);
      }
    }
    return false;
  }

  private static boolean isBetween(Ground ground, Point at, Point end) {
    for (Loop loop : ground.loops()) {
      for (int i = 0; i < loop.size(); i++) {
        Point other = loop.edge(i).start();
        double apart = other.distance(at);
        if (loop.angle(i) > INSIDE && apart > SAME && apart <= TOGETHER) {
          double round = at.distance(end) + end.distance(other);
          if (end.distance(other) <= SAME || round <= apart + SAME) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
