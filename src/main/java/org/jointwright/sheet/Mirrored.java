package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.shape.Box;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;

/**
 * Corners whose tapes all come from nearly one line: over that line there is a second place where
 * they close as well. Where it lies so near that nobody sees on the plan which is meant, one more
 * pull from beside the line says it.
 *
 * @param lettering corners and tapes
 * @param step the step that figures are printed to, inches
 */
record Mirrored(Lettering lettering, double step) {
  /** A place farther over than this share of the whole plan is seen to be wrong. */
  private static final double SEEN = 0.05;

  /** Points nearer to each other say no line; inches. */
  private static final double APART = 1;

  /** So many steps may lengths differ and still close: rounding adds up. */
  private static final double CLOSES = 1.5;

  /** A pull that differs by so many steps says which place is meant. */
  private static final double CLEAR = 3;

  /** Adds what is missing to {@code ties}, from {@code candidates}. */
  void mend(List<Ties.Tie> candidates, List<Ties.Tie> ties, List<Ties.Offset> offsets) {
    double extent = extent();
    for (LetteredCorner corner : lettering.corners()) {
      Optional<Point> other = secondPlace(corner, ties);
      boolean isTold = offsets.stream().anyMatch(o -> o.corner().equals(corner));
      if (isTold || other.isEmpty() || other.get().distance(corner.at()) > SEEN * extent) {
        continue;
      }
      Optional<Ties.Tie> best =
          candidates.stream()
              .filter(t -> t.from().equals(corner) || t.to().equals(corner))
              .max(Comparator.comparingDouble(t -> differs(t, corner, other.get())));
      if (best.isPresent() && differs(best.get(), corner, other.get()) > CLEAR * step) {
        candidates.remove(best.get());
        ties.add(best.get());
      } else {
        Drift.beside(lettering, corner).ifPresent(offsets::add);
      }
    }
  }

  private double extent() {
    return lettering.corners().stream()
        .map(c -> Box.of(c.at(), c.at()))
        .reduce(Box::with)
        .map(b -> Math.hypot(b.width(), b.height()))
        .orElse(0.0);
  }

  private static double differs(Ties.Tie tie, LetteredCorner corner, Point other) {
    Point from = tie.from().equals(corner) ? tie.to().at() : tie.from().at();
    return Math.abs(from.distance(other) - tie.length());
  }

  /**
   * The place over the line of all that a corner hangs on, where that closes as well; none of one
   * that stands on a string, for that says where.
   */
  private Optional<Point> secondPlace(LetteredCorner corner, List<Ties.Tie> ties) {
    if (lettering.tapes().stream().anyMatch(t -> lettering.between(t).contains(corner))) {
      return Optional.empty();
    }
    List<Point> from = from(corner, ties);
    if (from.stream().allMatch(p -> p.distance(from.getFirst()) < APART)) {
      return Optional.empty();
    }
    Point other = Mirror.through(from).of(corner.at());
    boolean closes =
        from.stream()
            .allMatch(p -> Math.abs(p.distance(other) - p.distance(corner.at())) <= CLOSES * step);
    return closes && other.distance(corner.at()) > step ? Optional.of(other) : Optional.empty();
  }

  private List<Point> from(LetteredCorner corner, List<Ties.Tie> ties) {
    List<Point> from = new ArrayList<>();
    lettering.tapes().forEach(t -> other(corner, t.from(), t.to()).ifPresent(from::add));
    ties.forEach(t -> other(corner, t.from(), t.to()).ifPresent(from::add));
    return from;
  }

  private static Optional<Point> other(LetteredCorner corner, LetteredCorner a, LetteredCorner b) {
    if (a.equals(corner)) {
      return Optional.of(b.at());
    }
    return b.equals(corner) ? Optional.of(a.at()) : Optional.empty();
  }
}
