package org.jointwright.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Point;

/**
 * The corners of a box-out all told from one side: a crew hooks its tape once.
 *
 * @param tape the side
 * @param isLeft whether they are to the left of it, looking along the tape
 * @param corners how far along it and how far off it each is, inches
 */
record CornerList(Tape tape, boolean isLeft, List<Corner> corners) {
  /** How far along a side and how far off it a corner is, inches. */
  record Corner(double along, double off) {}

  /**
   * The corners from the first side that one of them stands on, or else that their middle is told
   * from.
   */
  static Optional<CornerList> of(Sides sides, String slab, List<Point> corners) {
    List<Optional<Whereabouts>> on = corners.stream().map(p -> sides.onSide(slab, p)).toList();
    Point middle = corners.stream().reduce(Point::plus).orElseThrow().times(1.0 / corners.size());
    Tape tape =
        on.stream()
            .flatMap(Optional::stream)
            .flatMap(w -> w instanceof Whereabouts.OnTape t ? Stream.of(t.tape()) : Stream.empty())
            .findFirst()
            .orElseGet(() -> sides.off(slab, middle).tape());
    if (!tape.isStraight() || on.stream().anyMatch(w -> isElsewhere(w, tape))) {
      return Optional.empty();
    }
    Point from = tape.from().at();
    Point u = tape.to().at().minus(from).unit();
    boolean left = u.cross(middle.minus(from)) >= 0;
    List<Corner> found =
        corners.stream()
            .map(p -> p.minus(from))
            .map(v -> new Corner(u.dot(v), onto(left ? u.cross(v) : -u.cross(v))))
            .toList();
    double length = from.distance(tape.to().at());
    boolean fit =
        found.stream().allMatch(c -> c.off() >= 0 && c.along() >= 0 && c.along() <= length);
    return fit ? Optional.of(new CornerList(tape, left, found)) : Optional.empty();
  }

  /** What all but stands on the side is said to be on it. */
  private static double onto(double off) {
    return Math.abs(off) <= Sides.ON ? 0 : off;
  }

  /** At a lettered corner or on another side, where its mark is looked for. */
  private static boolean isElsewhere(Optional<Whereabouts> at, Tape tape) {
    return at.isPresent() && !(at.get() instanceof Whereabouts.OnTape t && t.tape().equals(tape));
  }
}
