package org.jointwright.designer.shaping;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * How far a thing stands from a side of its slab.
 *
 * @param side the side
 * @param away how far its nearest point is from the side’s line, inches
 */
public record SideOff(Segment side, double away) {
  /** Sides that lean less from each other look the same way: the cosine of 45 degrees. */
  private static final double ALIKE = Math.sqrt(0.5);

  /**
   * From the nearest straight side each of four ways, so that the tape may have been hooked on any
   * of them; in the order of the outline.
   *
   * @param of the points of which the nearest is measured
   */
  public static List<SideOff> eachWay(Slab slab, List<Point> of) {
    List<Segment> order =
        slab.outline().ring().edges().stream()
            .filter(Segment.class::isInstance)
            .map(Segment.class::cast)
            .toList();
    Point at = of.stream().reduce(Point::plus).orElseThrow().times(1.0 / of.size());
    List<Segment> near =
        order.stream()
            .filter(s -> s.length() > 1 && isBeside(s, at))
            .sorted(Comparator.comparingDouble((Edge e) -> e.distance(at)))
            .toList();
    Map<Integer, Segment> each = new HashMap<>();
    for (Segment s : near) {
      each.putIfAbsent(way(near.getFirst().direction(0), s.direction(0)), s);
    }
    return order.stream()
        .filter(each::containsValue)
        .map(s -> new SideOff(s, away(s, of)))
        .toList();
  }

  /** From the nearest side of all, and from the nearest across from it. */
  public static List<SideOff> nearestTwo(Slab slab, List<Point> of) {
    List<SideOff> near =
        eachWay(slab, of).stream().sorted(Comparator.comparingDouble(SideOff::away)).toList();
    return near.stream()
        .filter(
            o ->
                o.equals(near.getFirst())
                    || o.equals(
                        near.stream()
                            .filter(x -> Math.abs(x.in().dot(near.getFirst().in())) <= ALIKE)
                            .findFirst()
                            .orElse(near.getFirst())))
        .toList();
  }

  /** What moves points as far away from the side as the thing was. */
  public Point back(List<Point> of) {
    return in().times(away - away(side, of));
  }

  /** The way from the side into the slab. */
  public Point in() {
    return side.direction(0).left();
  }

  private static double away(Segment side, List<Point> of) {
    Point in = side.direction(0).left();
    return of.stream().mapToDouble(p -> p.minus(side.start()).dot(in)).min().orElseThrow();
  }

  /** Which way a side runs beside the first: 0 the same, 1 to its left, 2 against it, 3 right. */
  private static int way(Point first, Point other) {
    if (Math.abs(first.dot(other)) > ALIKE) {
      return first.dot(other) > 0 ? 0 : 2;
    }
    return first.cross(other) > 0 ? 1 : 3;
  }

  /** Whether the side is square across from the point, the point on the slab’s side of it. */
  private static boolean isBeside(Segment side, Point at) {
    Point from = at.minus(side.start());
    double along = from.dot(side.direction(0));
    return along >= 0 && along <= side.length() && side.direction(0).cross(from) >= 0;
  }
}
