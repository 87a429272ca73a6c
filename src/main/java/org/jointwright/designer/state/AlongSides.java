package org.jointwright.designer.state;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Places along the sides of slabs, to which the pencil is led by a figure. */
public final class AlongSides {
  /** Places nearer than this are one, inches. */
  private static final double SAME = 0.01;

  private AlongSides() {}

  /** What tells one side from another: its middle and its length, in tenths of an inch. */
  private record Middle(long x, long y, long length) {
    static Middle of(Edge side) {
      Point at = side.at(0.5);
      return new Middle(
          Math.round(10 * at.x()), Math.round(10 * at.y()), Math.round(10 * side.length()));
    }
  }

  /** The sides of all slabs, in their order; one that two slabs share once. */
  public static List<Edge> of(Plan plan) {
    Set<Middle> seen = new HashSet<>();
    return plan.slabs().stream()
        .flatMap(s -> s.outline().ring().edges().stream())
        .filter(e -> seen.add(Middle.of(e)))
        .toList();
  }

  private static boolean isAt(Point a, Point b) {
    return a.distance(b) < SAME;
  }

  /**
   * The number of the side on which the pencil stands: at a corner that along which it came. Empty
   * where it stands on none.
   */
  public static OptionalInt side(List<Edge> sides, Pencil pencil) {
    OptionalInt strung =
        IntStream.range(0, sides.size())
            .filter(i -> pencil.guides().stream().anyMatch(g -> isAlong(g, sides.get(i), pencil)))
            .findFirst();
    return strung.isPresent()
        ? strung
        : IntStream.range(0, sides.size())
            .filter(i -> sides.get(i).distance(pencil.at()) < SAME)
            .findFirst();
  }

  private static boolean isAlong(Guide guide, Edge side, Pencil pencil) {
    boolean isKind = guide.kind() == Guide.Kind.ON_SIDE || guide.kind() == Guide.Kind.HALF_WAY;
    return isKind
        && isAt(guide.from(), side.start())
        && side.distance(pencil.at()) < SAME
        && guide.beyond().filter(b -> !isAt(b, side.end())).isEmpty();
  }

  /** The number of the side that lies most likely across from one on which a line starts. */
  public static int across(List<Edge> sides, Point start) {
    Optional<Edge> from = sides.stream().filter(s -> s.distance(start) < SAME).findFirst();
    return from.flatMap(
            f ->
                IntStream.range(0, sides.size())
                    .boxed()
                    .min(
                        Comparator.comparingDouble((Integer i) -> likeness(f, sides.get(i)))
                            .thenComparingDouble(i -> sides.get(i).distance(start))))
        .orElse(0);
  }

  /** Ten where sides run the same way, ten below zero where they run against each other. */
  private static double likeness(Edge a, Edge b) {
    return Math.rint(10 * a.direction(0.5).dot(b.direction(0.5)));
  }

  /** How far along a side a place is, inches. */
  public static double along(Edge side, Point at) {
    return side.nearest(at) * side.length();
  }

  /** The desk with the pencil led so far along a side, as by keys: Enter sets it down there. */
  public static Desk led(Desk desk, Edge side, double inches) {
    Point at = side.at(Math.clamp(inches / side.length(), 0, 1));
    Pencil there = new Pencil(at, List.of(Attraction.along(Guide.Kind.ON_SIDE, side, at))).byKeys();
    return desk.draft()
        .map(d -> desk.withHand(InHand.drawing(d.withPencil(there))))
        .map(Drafting::inSight)
        .orElse(desk);
  }

  /** Whether Enter would set an end down where the pencil stands. */
  public static boolean isReady(Desk desk) {
    return desk.draft()
        .filter(d -> d.pencil().filter(p -> p.isByKeys() && !isAtLast(d, p)).isPresent())
        .isPresent();
  }

  /** Whether the pencil stands where the line starts, and was led nowhere since. */
  public static boolean isAtLast(Draft draft, Pencil pencil) {
    return draft.last().filter(l -> isAt(l, pencil.at())).isPresent();
  }
}
