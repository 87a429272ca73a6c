package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Corners made round by an arc that runs on from both sides, and sharp again. */
public final class Rounding {
  /** Sides that turn less than this into each other have no corner to round, radians. */
  private static final double STRAIGHT = 0.01;

  private Rounding() {}

  /**
   * The greatest radius, inches, by which a corner between two straight sides can be rounded; both
   * sides keep half an inch. Empty where it is no such corner.
   */
  public static Optional<Double> most(Outline outline, int corner) {
    List<Edge> edges = outline.ring().edges();
    Edge before = edges.get((corner + edges.size() - 1) % edges.size());
    Edge after = edges.get(corner);
    double turn = Math.abs(turn(before, after));
    boolean isCorner =
        before instanceof Segment
            && after instanceof Segment
            && turn > STRAIGHT
            && turn < Math.PI - STRAIGHT;
    double room = Math.min(before.length(), after.length()) - Sizes.CLEAR;
    return isCorner && room > 0 ? Optional.of(room / Math.tan(turn / 2)) : Optional.empty();
  }

  /** Where a rounded corner's two sides would meet; empty where the arc rounds no corner. */
  public static Optional<Point> sharp(Outline outline, int arc) {
    List<Edge> edges = outline.ring().edges();
    int n = edges.size();
    Edge before = edges.get((arc + n - 1) % n);
    Edge after = edges.get((arc + 1) % n);
    boolean isRounded =
        n > 3
            && edges.get(arc) instanceof Arc a
            && before instanceof Segment
            && after instanceof Segment
            && runsOn(before, a)
            && runsOn(a, after)
            && Math.abs(a.sweep()) < Math.PI - STRAIGHT;
    if (!isRounded) {
      return Optional.empty();
    }
    Point u = before.direction(0);
    Point v = after.direction(0);
    double t = after.start().minus(before.end()).cross(v) / u.cross(v);
    return Optional.of(before.end().plus(u.times(t)));
  }

  private static boolean runsOn(Edge a, Edge b) {
    return Math.abs(turn(a, b)) < STRAIGHT;
  }

  private static double turn(Edge before, Edge after) {
    Point u = before.direction(1);
    Point v = after.direction(0);
    return Math.atan2(u.cross(v), u.dot(v));
  }

  static Plan round(Plan plan, Ref corner, double radius) {
    int i = corner.index();
    return Rings.edit(plan, corner, e -> round(e, i, radius), k -> k < i ? k : k + 1);
  }

  private static Rings.Edged round(Rings.Edged e, int i, double radius) {
    Outline outline = e.outline();
    double most =
        most(outline, i)
            .orElseThrow(() -> new IllegalArgumentException("corner " + i + " cannot be rounded"));
    if (!(radius > 0 && radius <= most)) {
      throw new IllegalArgumentException("corner " + i + " has no room for a radius of " + radius);
    }
    List<Edge> edges = outline.ring().edges();
    Edge before = edges.get((i + edges.size() - 1) % edges.size());
    Edge after = edges.get(i);
    double turn = turn(before, after);
    double legs = Math.tan(Math.abs(turn) / 2);
    // Square corners are exact, so that figures typed come back as they were.
    double off = Math.abs(legs - 1) < 1e-12 ? radius : radius * legs;
    Point p = after.start();
    Point from = p.minus(before.direction(1).times(off));
    Point to = p.plus(after.direction(0).times(off));
    Point in = before.direction(1).left().times(Math.signum(turn) * radius);
    Point centre = from.plus(in);
    Point via = centre.plus(p.minus(centre).unit().times(radius));
    List<Vertex> vertices = new ArrayList<>(outline.vertices());
    vertices.set(i, vertices.get(i).moved(from, Optional.of(via)));
    vertices.add(i + 1, Vertex.at(to));
    Map<Integer, EdgeSetting> settings = new TreeMap<>();
    e.edges().forEach((k, s) -> settings.put(k < i ? k : k + 1, s));
    EdgeSetting own = e.edges().getOrDefault(i, EdgeSetting.OPEN);
    int last = (i + edges.size() - 1) % edges.size();
    EdgeSetting other = e.edges().getOrDefault(last, EdgeSetting.OPEN);
    if (!own.equals(EdgeSetting.OPEN)) {
      settings.put(i + 1, own.withFeatures(later(own.features(), off, after.length())));
      // The arc is against what both its sides are against, if that is one thing.
      if (own.against() == other.against()) {
        settings.put(i, own.withFeatures(List.of()));
      }
    }
    Outline now = new Outline(vertices);
    return new Rings.Edged(now, EdgesAfter.fitted(now, settings));
  }

  private static List<Feature> later(List<Feature> features, double off, double length) {
    return features.stream()
        .flatMap(f -> f.cut(off, length).stream())
        .map(f -> f.shifted(-off))
        .toList();
  }

  static Plan sharpen(Plan plan, Ref arc) {
    int i = arc.index();
    return Rings.edit(plan, arc, e -> sharpen(e, i), k -> k < i ? k : Math.max(0, k - 1));
  }

  private static Rings.Edged sharpen(Rings.Edged e, int i) {
    Outline outline = e.outline();
    Point corner =
        sharp(outline, i)
            .orElseThrow(() -> new IllegalArgumentException("edge " + i + " rounds no corner"));
    int n = outline.vertices().size();
    int next = (i + 1) % n;
    double off = corner.distance(outline.vertices().get(next).at());
    List<Vertex> vertices = new ArrayList<>(outline.vertices());
    vertices.set(next, vertices.get(next).moved(corner, Optional.empty()));
    vertices.remove(i);
    Map<Integer, EdgeSetting> settings = new TreeMap<>();
    e.edges()
        .forEach(
            (k, s) -> {
              if (k != i) {
                EdgeSetting kept =
                    k == next
                        ? s.withFeatures(s.features().stream().map(f -> f.shifted(off)).toList())
                        : s;
                settings.put(k < i ? k : k - 1, kept);
              }
            });
    Outline now = new Outline(vertices);
    return new Rings.Edged(now, EdgesAfter.fitted(now, settings));
  }
}
