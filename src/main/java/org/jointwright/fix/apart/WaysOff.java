package org.jointwright.fix.apart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.shape.jts.Overlap;

/** Where a slab can be moved so that it lies beside another instead of over it. */
public final class WaysOff {
  /** No more sides are moved off, one by one; the nearest. */
  private static final int MOST = 6;

  /** Who moves a slab moves it hardly so many times as far as it need be moved; own figure. */
  private static final double FARTHER = 4;

  /** Ways that part by less are one, the sine. */
  private static final double ONE_WAY = 0.02;

  /** The way off an arc is found to this, inches. */
  private static final double FINE = 0.01;

  private final Region own;
  private final Region other;
  private final Overlap overlap;

  private WaysOff(Slab own, Slab other, Overlap overlap) {
    this.own = own.region();
    this.other = other.region();
    this.overlap = overlap;
  }

  /**
   * The moves that clear it, the shortest first: square to a side of the other slab, or to its own
   * side where the other is round or stands askew; out of an inside corner off two sides at once;
   * off a round one away from its middle.
   */
  public static List<Point> of(Slab own, Slab other, Overlap overlap) {
    return new WaysOff(own, other, overlap).all();
  }

  private List<Point> all() {
    List<Point> out = outOfOther();
    List<Point> ways = new ArrayList<>(out);
    for (Segment side : overlap.sides(own)) {
      add(ways, side.direction(0).left().times(overlap.depth(side)));
    }
    if (ways.stream().noneMatch(this::clears)) {
      corner(out).ifPresent(ways::add);
      offArc().ifPresent(ways::add);
    }
    List<Point> clear =
        ways.stream().filter(this::clears).sorted(Comparator.comparingDouble(Point::norm)).toList();
    return clear.stream().filter(w -> w.norm() <= FARTHER * clear.getFirst().norm()).toList();
  }

  /** Off the sides that bound what lies in both; off any side where none does. */
  private List<Point> outOfOther() {
    List<Segment> bounds = overlap.sides(other);
    List<Segment> sides =
        bounds.isEmpty()
            ? other.outer().edges().stream()
                .flatMap(e -> e instanceof Segment s ? Stream.of(s) : Stream.<Segment>empty())
                .toList()
            : bounds;
    List<Point> ways = new ArrayList<>();
    sides.stream()
        .filter(s -> overlap.depth(s) > 0)
        .sorted(Comparator.comparingDouble(overlap::depth))
        .limit(MOST)
        .forEach(s -> add(ways, s.direction(0).left().times(-overlap.depth(s))));
    return ways;
  }

  /** One way more, unless there is one like it that is no longer. */
  private static void add(List<Point> ways, Point way) {
    if (way.norm() > 0
        && ways.stream()
            .noneMatch(
                w ->
                    w.dot(way) > 0
                        && Math.abs(w.unit().cross(way.unit())) < ONE_WAY
                        && w.norm() <= way.norm() + FINE)) {
      ways.add(way);
    }
  }

  /** Off the two nearest sides that stand square to one another. */
  private static Optional<Point> corner(List<Point> out) {
    return out.stream()
        .skip(1)
        .filter(w -> Math.abs(w.unit().dot(out.getFirst().unit())) < ONE_WAY)
        .findFirst()
        .map(w -> w.plus(out.getFirst()));
  }

  /** Away from the middle of the arc that bounds what lies in both. */
  private Optional<Point> offArc() {
    Point middle = overlap.widest().centre();
    return other.outer().edges().stream()
        .filter(Arc.class::isInstance)
        .map(Arc.class::cast)
        .filter(a -> a.sweep() > 0 && middle.distance(a.centre()) > FINE)
        .min(Comparator.comparingDouble((Edge e) -> e.distance(middle)))
        .map(a -> middle.minus(a.centre()).unit())
        .map(this::farEnough);
  }

  private Point farEnough(Point way) {
    double clear = other.outer().perimeter() + own.outer().perimeter();
    double over = 0;
    while (clear - over > FINE) {
      double between = (clear + over) / 2;
      if (isClear(way.times(between), FINE)) {
        clear = between;
      } else {
        over = between;
      }
    }
    return way.times(clear);
  }

  private boolean clears(Point way) {
    return isClear(way, Tolerance.LENGTH_INCHES);
  }

  private boolean isClear(Point way, double least) {
    Motion motion = Motion.by(way);
    Region moved =
        new Region(
            ring(own.outer(), motion), own.holes().stream().map(h -> ring(h, motion)).toList());
    return Overlap.of(moved, other, least).isEmpty();
  }

  private static Ring ring(Ring ring, Motion motion) {
    return new Ring(ring.edges().stream().map(motion::of).toList());
  }
}
