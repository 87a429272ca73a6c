package org.jointwright.check.wish;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.practice.Angles;
import org.jointwright.practice.PanelShape;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/**
 * How long the panel must be that holds a zone where no joint may run.
 *
 * <p>What of a slab lies in the zone stays in one panel. A rectangle d long and w wide in it fits
 * in a panel turned by an angle t against it only where the panel is d cos t + w sin t long. Where
 * the zone runs from edge to edge t is 30 degrees at most, for the panels beside it keep 60 degrees
 * (M4) between joint and edge; elsewhere 45, for further round the other side is the longer one.
 */
final class UncutZones {
  private static final double BEYOND = 1e-3;

  private final Region slab;
  private final Ring zone;

  private UncutZones(Region slab, Ring zone) {
    this.slab = slab;
    this.zone = zone;
  }

  /**
   * A zone in a slab.
   *
   * @param at the middle of what lies in the slab
   * @param runs how far it runs there, inches
   * @param least how long the panel that holds it is at least, inches; an arc of the slab's edge,
   *     which lets a panel be longer, taken off
   */
  record Uncut(Point at, double runs, double least) {}

  /** What can be said of a zone; none where it lies beside the slab or bends. */
  static List<Uncut> of(Region slab, Ring zone) {
    return new UncutZones(slab, zone).find();
  }

  private List<Uncut> find() {
    List<Point> held = held();
    if (held.isEmpty()) {
      return List.of();
    }
    Point u = EnclosingRectangle.of(zone).direction();
    Point middle = middle(held, u);
    Segment one = run(middle, u);
    Segment other = run(middle, u.left());
    boolean first = one.length() >= other.length();
    Segment length = first ? one : other;
    double d = length.length();
    double w = isFilled(one, other, middle) ? Math.min(one.length(), other.length()) : 0;
    boolean across = onEdge(length.start()) && onEdge(length.end());
    double most = Math.toRadians(across ? 90 - Angles.ACUTE.value() : 45);
    double least = Math.min(d, d * Math.cos(most) + w * Math.sin(most));
    double bow = edges().stream().anyMatch(e -> e.turn() != 0) ? PanelShape.BOW.value() : 1;
    return d < 1 ? List.of() : List.of(new Uncut(middle, d, least / bow));
  }

  private List<Edge> edges() {
    List<Edge> all = new ArrayList<>(slab.outer().edges());
    slab.holes().forEach(h -> all.addAll(h.edges()));
    return all;
  }

  /** The corners of what lies both in the slab and in the zone. */
  private List<Point> held() {
    List<Point> found = new ArrayList<>();
    zone.vertices().stream().filter(slab::contains).forEach(found::add);
    slab.outer().vertices().stream().filter(zone::contains).forEach(found::add);
    for (Edge e : edges()) {
      for (Edge z : zone.edges()) {
        Crossing.of(e, z).forEach(c -> found.add(c.at()));
      }
    }
    return found;
  }

  private static Point middle(List<Point> points, Point u) {
    Point at = new Point(0, 0);
    for (Point way : List.of(u, u.left())) {
      double low = points.stream().mapToDouble(p -> p.dot(way)).min().orElseThrow();
      double high = points.stream().mapToDouble(p -> p.dot(way)).max().orElseThrow();
      at = at.plus(way.times((low + high) / 2));
    }
    return at;
  }

  /** The stretch of a line through a place that lies in both without a break. */
  private Segment run(Point middle, Point u) {
    double far = slab.outer().box().width() + slab.outer().box().height();
    return new Segment(
        end(middle, middle.minus(u.times(far))), end(middle, middle.plus(u.times(far))));
  }

  private Point end(Point from, Point to) {
    if (!slab.contains(from) || !zone.contains(from)) {
      return from;
    }
    Edge ray = new Segment(from, to);
    List<Edge> all = new ArrayList<>(edges());
    all.addAll(zone.edges());
    Point nearest = to;
    for (Edge e : all) {
      for (Crossing c : Crossing.of(ray, e)) {
        if (c.at().distance(from) < nearest.distance(from)) {
          nearest = c.at();
        }
      }
    }
    return nearest;
  }

  private boolean onEdge(Point p) {
    return edges().stream().anyMatch(e -> e.distance(p) < BEYOND);
  }

  /** Whether the whole rectangle of two runs through a place lies in both. */
  private boolean isFilled(Segment one, Segment other, Point middle) {
    for (Point p : List.of(one.start(), one.end())) {
      for (Point q : List.of(other.start(), other.end())) {
        // A hair inside, where it is plain on which side a corner lies.
        Point corner = middle.plus(p.minus(middle).plus(q.minus(middle)).times(0.999));
        if (!slab.contains(corner) || !zone.contains(corner)) {
          return false;
        }
      }
    }
    return true;
  }
}
