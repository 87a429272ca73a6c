package org.jointwright.designer.shaping;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jointwright.designer.state.Hold;
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
  private static final double ALIKE = Math.sqrt(0.5) + 1e-9;

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

  /** From the sides that the place of what is in the hand can be typed from. */
  public static List<SideOff> of(Hold.HeldAddition held, Slab slab) {
    return held.offered().isEmpty()
        ? eachWay(slab, held.measured())
        : fromSides(slab, held.measured(), held.offered());
  }

  /**
   * From these sides, whether they are the nearest or not; in the order of the outline.
   *
   * @param sides their numbers in it
   */
  private static List<SideOff> fromSides(Slab slab, List<Point> of, List<Integer> sides) {
    List<Edge> edges = slab.outline().ring().edges();
    return IntStream.range(0, edges.size())
        .filter(sides::contains)
        .mapToObj(edges::get)
        .filter(Segment.class::isInstance)
        .map(Segment.class::cast)
        .map(s -> new SideOff(s, away(s, of)))
        .toList();
  }

  /**
   * The two of them by which a hand has the place: the one it was typed from last, or else the
   * nearest, and the first such across from that, if there is one.
   *
   * @param typed the sides from which its place was typed, the last one last, by their number
   */
  public static List<SideOff> two(Slab slab, List<SideOff> all, List<Integer> typed) {
    List<SideOff> order =
        all.stream()
            .sorted(
                Comparator.comparingInt((SideOff o) -> -typed.lastIndexOf(o.number(slab)))
                    .thenComparingDouble(SideOff::away))
            .toList();
    return order.stream()
        .filter(
            o ->
                o.equals(order.getFirst())
                    || o.equals(
                        order.stream()
                            .filter(x -> x.isAcross(order.getFirst()))
                            .findFirst()
                            .orElse(order.getFirst())))
        .toList();
  }

  /** From one side; empty where it is none that is straight. */
  static Optional<SideOff> from(Slab slab, List<Point> of, int side) {
    return fromSides(slab, of, List.of(side)).stream().findFirst();
  }

  /** The side’s number in the outline. */
  public int number(Slab slab) {
    return slab.outline().ring().edges().indexOf(side);
  }

  /** Whether the sides run two ways, so that both together tell where a thing stands. */
  public boolean isAcross(SideOff other) {
    return Math.abs(in().dot(other.in())) <= ALIKE;
  }

  /** What moves points as far away from the side as the thing was. */
  public Point back(List<Point> of) {
    return in().times(away - away(side, of));
  }

  /**
   * What moves a thing this far away from the side, and leaves it as far from another as it is:
   * where the two are not square to each other, straight off the one would change the other.
   *
   * @param wanted inches
   */
  public Point to(double wanted, SideOff kept) {
    Point along = kept.side().direction(0);
    return along.times((wanted - away) / along.dot(in()));
  }

  /** What moves a thing straight off the side until it is this far from it, inches. */
  public Point to(double wanted) {
    return in().times(wanted - away);
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
