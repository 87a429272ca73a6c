package org.jointwright.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** A box-out's shape as a crew makes it. */
sealed interface BoxOutShape {
  /** How far a shape may be off its description; inches. */
  double NEAR = 0.06;

  /** A circle. */
  record Round(Point centre, double radius) implements BoxOutShape {}

  /** A rectangle with its first side along a straight side of the slab. */
  record Square(Point centre, Tape along, double length, double depth) implements BoxOutShape {}

  /** A square whose corners point along and across a straight side of the slab. */
  record Turned(Point centre, Tape along, double reach) implements BoxOutShape {}

  /**
   * Anything else: by its corners.
   *
   * @param corners where its straight sides end
   * @param radius of its round ends, where it has any
   */
  record Cornered(List<Point> corners, OptionalDouble radius) implements BoxOutShape {}

  /** What shape {@code ring} is, seen from the tape it is told from. */
  static BoxOutShape of(Ring ring, Sides sides, String slab) {
    Optional<Round> round = round(ring);
    if (round.isPresent()) {
      return round.get();
    }
    List<Point> v = ring.vertices();
    OptionalDouble bent =
        ring.edges().stream()
            .flatMapToDouble(
                e -> e instanceof Arc a ? DoubleStream.of(a.radius()) : DoubleStream.empty())
            .min();
    if (v.size() == 4 && bent.isEmpty()) {
      Point centre = v.get(0).plus(v.get(1)).plus(v.get(2)).plus(v.get(3)).times(0.25);
      Tape tape = sides.off(slab, centre).tape();
      Point u = tape.to().at().minus(tape.from().at()).unit();
      Optional<BoxOutShape> known = fourCorners(v, centre, tape, u);
      if (known.isPresent()) {
        return known.get();
      }
    }
    return new Cornered(v, bent);
  }

  private static Optional<BoxOutShape> fourCorners(
      List<Point> v, Point centre, Tape tape, Point u) {
    double reach = v.get(0).distance(centre);
    List<Point> tips =
        List.of(
            centre.plus(u.times(reach)),
            centre.plus(u.left().times(reach)),
            centre.minus(u.times(reach)),
            centre.minus(u.left().times(reach)));
    if (same(v, tips)) {
      return Optional.of(new Turned(centre, tape, reach));
    }
    double length = 2 * Math.abs(u.dot(v.get(0).minus(centre)));
    double depth = 2 * Math.abs(u.cross(v.get(0).minus(centre)));
    Point x = u.times(length / 2);
    Point y = u.left().times(depth / 2);
    List<Point> box =
        List.of(
            centre.plus(x).plus(y),
            centre.minus(x).plus(y),
            centre.minus(x).minus(y),
            centre.plus(x).minus(y));
    return same(v, box) ? Optional.of(new Square(centre, tape, length, depth)) : Optional.empty();
  }

  private static boolean same(List<Point> a, List<Point> b) {
    return a.stream().allMatch(p -> b.stream().anyMatch(q -> p.distance(q) <= NEAR));
  }

  /** The circle that {@code ring} is, of arcs or of eight chords or more. */
  static Optional<Round> round(Ring ring) {
    List<Point> v = ring.vertices();
    Point centre = ring.box().centre();
    double radius = ring.box().width() / 2;
    boolean arcs = ring.edges().stream().allMatch(e -> e.turn() != 0);
    if (!arcs && v.size() < 8) {
      return Optional.empty();
    }
    boolean all =
        ring.edges().stream()
            .allMatch(
                e ->
                    Math.abs(e.start().distance(centre) - radius) <= 0.5
                        && (!arcs || Math.abs(e.at(0.5).distance(centre) - radius) <= NEAR));
    return all ? Optional.of(new Round(centre, radius)) : Optional.empty();
  }
}
