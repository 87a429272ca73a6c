package org.jointwright.layout.keep;

import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jspecify.annotations.Nullable;

/**
 * The slab's own line between two corners that are there before and now: one edge as a rule, more
 * where a corner was put in or taken out between.
 *
 * @param before its edges as they were
 * @param now its edges as they are
 * @param lengthBefore how long it was, inches
 * @param length how long it is, inches
 * @param inner whether it belongs to an opening or a box-out
 */
record Stretch(
    List<Edge> before, List<Edge> now, double lengthBefore, double length, boolean inner) {
  /** How far beyond its edges a line is still taken to meet it, inches. */
  private static final double REACH = 0.02;

  static Stretch of(List<Edge> before, List<Edge> now, boolean inner) {
    return new Stretch(List.copyOf(before), List.copyOf(now), total(before), total(now), inner);
  }

  private static double total(List<Edge> edges) {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  /** How far {@code p} stood off it, inches. */
  double distanceBefore(Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge e : before) {
      least = e.box().grown(1).holds(p) ? Math.min(least, e.distance(p)) : least;
    }
    return least;
  }

  /** How far along it {@code p} stood, inches from its first corner. */
  double alongBefore(Point p) {
    return along(before, p);
  }

  /** The same for a point on it now. */
  double alongNow(Point p) {
    return along(now, p);
  }

  private static double along(List<Edge> edges, Point p) {
    double sum = 0;
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (Edge e : edges) {
      double share = e.nearest(p);
      double off = e.at(share).distance(p);
      if (off < least) {
        least = off;
        best = sum + share * e.length();
      }
      sum += e.length();
    }
    return best;
  }

  /** The point now at so many inches along. */
  Point at(double along) {
    double left = Math.clamp(along, 0, length);
    for (Edge e : now) {
      if (left <= e.length()) {
        return e.length() == 0 ? e.start() : e.at(left / e.length());
      }
      left -= e.length();
    }
    return now.getLast().end();
  }

  Point firstCorner() {
    return now.getFirst().start();
  }

  Point lastCorner() {
    return now.getLast().end();
  }

  /** The only edge as it was and as it is, where both are straight. */
  boolean isStraight() {
    return before.size() == 1
        && now.size() == 1
        && before.getFirst() instanceof Segment
        && now.getFirst() instanceof Segment
        && lengthBefore > 0
        && length > 0;
  }

  /** Where a carrier meets it now, the meeting nearest to {@code by}. */
  @Nullable Point meets(Carrier carrier, Point by) {
    Point best = null;
    for (Edge e : now) {
      for (Carrier.Crossing c : carrier.crossings(e)) {
        Point p = e.at(c.share());
        if (carrier.distance(p) <= REACH && (best == null || p.distance(by) < best.distance(by))) {
          best = p;
        }
      }
    }
    return best;
  }
}
