package org.jointwright.layout.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Corners;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/**
 * A slab with square corners, turned upright.
 *
 * @param along the direction that became the first coordinate's
 * @param rings its corners, outline first, coordinates in inches, those of one line made equal
 */
record Frame(Point along, List<List<Point>> rings) {
  /** How far an edge may lean from end to end and count as square, inches. */
  private static final double LEAN = 0.1;

  /** Lines nearer to each other than this are a jog that the rules look past, inches. */
  private static final double JOG = Corners.JOG.value().inches();

  /** Inside corners nearer to each other than this count as one, inches. */
  private static final double ONE_CORNER = Corners.TOGETHER.value().inches();

  Frame {
    rings = rings.stream().map(List::copyOf).toList();
  }

  /** Why a slab has no such frame; empty where it has one. */
  static Optional<Nearness.Why> obstacle(Slab slab) {
    List<Edge> edges = rings(slab).stream().flatMap(r -> r.edges().stream()).toList();
    if (edges.stream().anyMatch(e -> !(e instanceof Segment))) {
      return Optional.of(Nearness.Why.ARCS);
    }
    Point u = longest(edges);
    for (Edge e : edges) {
      Point d = e.end().minus(e.start());
      if (Math.min(Math.abs(d.cross(u)), Math.abs(d.dot(u))) > LEAN) {
        return Optional.of(Nearness.Why.SLANTED);
      }
    }
    return of(slab).hasJogs() ? Optional.of(Nearness.Why.JOGS) : Optional.empty();
  }

  /** The frame of a slab that has one. */
  static Frame of(Slab slab) {
    List<Ring> found = rings(slab);
    Point u = longest(found.stream().flatMap(r -> r.edges().stream()).toList());
    List<List<Point>> turned = new ArrayList<>();
    for (Ring ring : found) {
      List<Point> corners = new ArrayList<>();
      for (Edge e : ring.edges()) {
        corners.add(new Point(e.start().dot(u), e.start().dot(u.left())));
      }
      turned.add(corners);
    }
    List<Double> xs = lines(turned.stream().flatMap(List::stream).map(Point::x).toList());
    List<Double> ys = lines(turned.stream().flatMap(List::stream).map(Point::y).toList());
    List<List<Point>> rings = new ArrayList<>();
    for (List<Point> ring : turned) {
      rings.add(
          cornersOnly(
              ring.stream().map(p -> new Point(nearest(xs, p.x()), nearest(ys, p.y()))).toList()));
    }
    return new Frame(u, rings);
  }

  /** Where a point of the plan lies in the frame. */
  Point in(Point p) {
    return new Point(p.dot(along), p.dot(along.left()));
  }

  /** The lines that its corners stand on, the first coordinate's or the second's, growing. */
  List<Double> lines(boolean second) {
    return List.copyOf(
        new TreeSet<>(
            rings.stream().flatMap(List::stream).map(p -> second ? p.y() : p.x()).toList()));
  }

  /** The length of the slab's edges, openings' too, ft. */
  double edge() {
    double inches = 0;
    for (List<Point> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        inches += ring.get(i).distance(ring.get((i + 1) % ring.size()));
      }
    }
    return inches / 12;
  }

  /** Whether a point lies in the slab. */
  boolean holds(double x, double y) {
    boolean odd = false;
    for (List<Point> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Point a = ring.get(i);
        Point b = ring.get((i + 1) % ring.size());
        odd ^= a.x() > x && (a.y() > y) != (b.y() > y);
      }
    }
    return odd;
  }

  private boolean hasJogs() {
    for (boolean second : new boolean[] {false, true}) {
      List<Double> at = lines(second);
      for (int i = 1; i < at.size(); i++) {
        if (at.get(i) - at.get(i - 1) < JOG) {
          return true;
        }
      }
    }
    List<Point> inside = insideCorners();
    for (int i = 0; i < inside.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (inside.get(i).distance(inside.get(k)) <= ONE_CORNER) {
          return true;
        }
      }
    }
    return false;
  }

  private List<Point> insideCorners() {
    List<Point> found = new ArrayList<>();
    double step = JOG / 4;
    for (Point p : rings.stream().flatMap(List::stream).toList()) {
      int around = 0;
      for (int k = 0; k < 4; k++) {
        around +=
            holds(p.x() + (k % 2 == 0 ? step : -step), p.y() + (k < 2 ? step : -step)) ? 1 : 0;
      }
      if (around == 3) {
        found.add(p);
      }
    }
    return found;
  }

  private static List<Ring> rings(Slab slab) {
    List<Ring> found = new ArrayList<>(List.of(slab.outline().ring()));
    slab.openings().forEach(o -> found.add(o.outline().ring()));
    return found;
  }

  private static Point longest(List<Edge> edges) {
    Edge best = edges.getFirst();
    for (Edge e : edges) {
      best = e.length() > best.length() + LEAN ? e : best;
    }
    Point d = best.end().minus(best.start()).unit();
    // The quarter turn nearest to upright, so that plans drawn upright keep their coordinates.
    while (d.x() < Math.abs(d.y()) || (d.x() == -d.y() && d.y() < 0)) {
      d = d.left();
    }
    return d;
  }

  private static List<Double> lines(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    List<Double> found = new ArrayList<>();
    for (double v : sorted) {
      if (found.isEmpty() || v - found.getLast() > 2 * LEAN) {
        found.add(v);
      }
    }
    return found;
  }

  private static double nearest(List<Double> lines, double v) {
    double best = lines.getFirst();
    for (double l : lines) {
      best = Math.abs(l - v) < Math.abs(best - v) ? l : best;
    }
    return best;
  }

  private static List<Point> cornersOnly(List<Point> ring) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point before = ring.get((i + ring.size() - 1) % ring.size());
      Point at = ring.get(i);
      Point after = ring.get((i + 1) % ring.size());
      if (at.minus(before).cross(after.minus(at)) != 0) {
        kept.add(at);
      }
    }
    return kept;
  }
}
