package org.jointwright.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A convex hull.
 *
 * @param points its corners, counter-clockwise, none in line with its neighbours
 */
public record Hull(List<Point> points) {
  /** Arcs enter the hull as chords this near, inches: a sixteenth of the length tolerance. */
  public static final double CHORD_ERROR = 1.0 / 32;

  /** Copies the list. */
  public Hull {
    points = List.copyOf(points);
  }

  /** The hull of a ring. */
  public static Hull of(Ring ring) {
    return of(Chords.round(ring, CHORD_ERROR));
  }

  /** The hull of points (Andrew's monotone chain). */
  public static Hull of(List<Point> all) {
    List<Point> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
    if (sorted.size() < 3) {
      return new Hull(sorted);
    }
    List<Point> lower = chain(sorted);
    List<Point> upper = chain(sorted.reversed());
    lower.removeLast();
    upper.removeLast();
    lower.addAll(upper);
    return new Hull(lower);
  }

  private static List<Point> chain(List<Point> sorted) {
    List<Point> chain = new ArrayList<>();
    for (Point p : sorted) {
      while (chain.size() >= 2 && !turnsLeft(chain.get(chain.size() - 2), chain.getLast(), p)) {
        chain.removeLast();
      }
      chain.add(p);
    }
    return chain;
  }

  private static boolean turnsLeft(Point a, Point b, Point c) {
    return b.minus(a).cross(c.minus(b)) > 0;
  }

  /** The smallest distance between two parallel lines that hold it, inches. */
  public double width() {
    double best = Double.POSITIVE_INFINITY;
    int n = points.size();
    for (int i = 0; i < n; i++) {
      Point a = points.get(i);
      Point u = points.get((i + 1) % n).minus(a);
      if (u.norm() == 0) {
        continue;
      }
      Point normal = u.unit().left();
      double far = 0;
      for (Point p : points) {
        far = Math.max(far, p.minus(a).dot(normal));
      }
      best = Math.min(best, far);
    }
    return Double.isFinite(best) ? best : 0;
  }
}
