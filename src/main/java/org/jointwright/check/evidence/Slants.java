package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.along.Nearness;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Straight contraction joints that stand a little off what they serve. */
public final class Slants {
  /** An edge shorter than this gives a slab no direction, inches. */
  private static final double SHORT = 24;

  /**
   * A joint that stands off.
   *
   * @param joint the joint
   * @param at its middle
   * @param degrees how far off the nearest direction that it serves
   */
  public record Slant(Joint joint, Point at, double degrees) {}

  private final List<Edge> edges;
  private final List<Point> directions = new ArrayList<>();

  private Slants(Judged slab) {
    edges = slab.concrete().edgesAndCutouts();
    for (Edge e : edges) {
      if (e instanceof Segment && e.length() >= SHORT) {
        directions.add(e.direction(0));
      }
    }
  }

  /**
   * The slab's joints that stand 1 to 15 degrees off parallel, square or radial to every edge that
   * they end on and every side of the slab. Left out are locked ones, those that corners hold at
   * both ends, and those whose direction lies between two sides that run together: there the sides
   * force it.
   */
  public static List<Slant> of(Judged slab) {
    Slants slants = new Slants(slab);
    List<Slant> found = new ArrayList<>();
    for (Joint j : slab.joints()) {
      if (j.kind() == JointKind.CONTRACTION
          && !j.locked()
          && !slab.corners().joints().contains(j.id())
          && j.path().edges().size() == 1
          && j.path().edges().getFirst() instanceof Segment s) {
        double off = slants.off(s);
        if (off > Angles.SLANT.value() && off <= Angles.EDGE.value() && !slants.isForced(s)) {
          found.add(new Slant(j, s.at(0.5), off));
        }
      }
    }
    return found;
  }

  /** How far a direction at a place is off the nearest edge's it serves, degrees in [0, 45]. */
  static double offAt(List<Edge> edges, Point place, Point direction) {
    double least = 45;
    for (Edge e : edges) {
      double t = e.nearest(place);
      if (e.at(t).distance(place) <= Nearness.ON) {
        least = Math.min(least, off(direction, e.direction(t)));
      }
    }
    return least;
  }

  private double off(Segment s) {
    Point u = s.direction(0);
    double least = Math.min(offAt(edges, s.start(), u), offAt(edges, s.end(), u));
    for (Point d : directions) {
      least = Math.min(least, off(u, d));
    }
    return least;
  }

  /** Degrees off parallel or square, whichever is less. */
  private static double off(Point u, Point v) {
    double sine = Math.min(1, Math.min(Math.abs(u.cross(v)), Math.abs(u.dot(v))));
    return Math.toDegrees(Math.asin(sine));
  }

  private boolean isForced(Segment s) {
    return (isCorner(s.start()) && isCorner(s.end())) || isBetween(s.direction(0));
  }

  private boolean isCorner(Point p) {
    return edges.stream().anyMatch(e -> e.start().distance(p) <= Tolerance.LENGTH_INCHES);
  }

  /** Whether one side of the slab runs a little to the left of a direction and one to the right. */
  private boolean isBetween(Point u) {
    double most = Math.sin(Math.toRadians(Angles.EDGE.value() + Angles.SLANT.value()));
    boolean left = false;
    boolean right = false;
    for (Point d : directions) {
      double aside = u.cross(d) * Math.signum(u.dot(d));
      left |= aside > 0 && aside < most;
      right |= aside < 0 && aside > -most;
    }
    return left && right;
  }
}
