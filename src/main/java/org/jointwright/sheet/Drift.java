package org.jointwright.sheet;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Tape;

/**
 * Corners that the rounded figures of a sheet put off their place by more than a step of the tape,
 * for they hang on pulls that are nearly in line. Each gets one more pull; where no single pull
 * brings it within a step, it is told from a string.
 *
 * @param lettering corners and tapes
 * @param told what is printed for a length, inches
 * @param step the step that figures are printed to, inches
 * @param certainty how well the corners are held so far
 */
record Drift(Lettering lettering, DoubleUnaryOperator told, double step, Certainty certainty) {
  /** What is found by linear sums is a little more or less on the ground; times the step. */
  private static final double NEAR = 0.8;

  /** Adds what is missing to {@code ties}, from {@code candidates}, and to {@code offsets}. */
  void mend(List<Ties.Tie> candidates, List<Ties.Tie> ties, List<Ties.Offset> offsets) {
    Drift now = this;
    Set<Integer> given = new HashSet<>();
    for (int i = now.worst(given); i >= 0; i = now.worst(given)) {
      given.add(i);
      LetteredCorner corner = lettering.corners().get(i);
      Optional<Ties.Tie> pull = now.best(corner, candidates);
      Optional<Drift> pulled = pull.map(now::with);
      if (pulled.isPresent() && pulled.get().isNear(i)) {
        candidates.remove(pull.get());
        ties.add(pull.get());
        now = pulled.get();
        continue;
      }
      Optional<Ties.Offset> offset =
          offsets.stream().anyMatch(o -> o.corner().equals(corner))
              ? Optional.empty()
              : beside(lettering, corner);
      if (offset.isPresent()) {
        offsets.add(offset.get());
        now = now.with(offset.get());
      }
    }
  }

  private boolean isNear(int corner) {
    return certainty.adrift()[corner] <= NEAR * step;
  }

  /** The corner that is farthest off its place, of those that got nothing yet; -1 for none. */
  private int worst(Set<Integer> given) {
    double[] adrift = certainty.adrift();
    int worst = -1;
    for (int i = 0; i < adrift.length; i++) {
      boolean isOff = adrift[i] > NEAR * step && !given.contains(i);
      if (isOff && (worst < 0 || adrift[i] > adrift[worst])) {
        worst = i;
      }
    }
    return worst;
  }

  private Drift with(Ties.Tie tie) {
    Certainty more = certainty.copy();
    Ties.pull(more, lettering.corners(), tie, told);
    return new Drift(lettering, told, step, more);
  }

  private Drift with(Ties.Offset offset) {
    Certainty more = certainty.copy();
    Ties.tell(more, lettering.corners(), offset, told);
    return new Drift(lettering, told, step, more);
  }

  /** The pull to a corner that leaves least doubt of it. */
  private Optional<Ties.Tie> best(LetteredCorner corner, List<Ties.Tie> candidates) {
    int i = lettering.corners().indexOf(corner);
    return candidates.stream()
        .filter(t -> t.from().equals(corner) || t.to().equals(corner))
        .min(Comparator.comparingDouble(t -> with(t).certainty().of(i)));
  }

  /** The corner told from a side that it does not stand on and lies beside. */
  static Optional<Ties.Offset> beside(Lettering lettering, LetteredCorner corner) {
    List<Tape> beside =
        lettering.tapes().stream()
            .filter(t -> t.isStraight() && !t.from().equals(t.to()))
            .filter(t -> !t.carries(corner.at(), Lettering.SAME_PLACE))
            .filter(t -> isBeside(t, corner))
            .toList();
    return beside.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Ties.Offset(
                corner,
                new Sides(new Lettering(lettering.corners(), beside)).off("", corner.at())));
  }

  private static boolean isBeside(Tape tape, LetteredCorner corner) {
    double along =
        tape.to().at().minus(tape.from().at()).unit().dot(corner.at().minus(tape.from().at()));
    return along >= 0 && along <= tape.length();
  }
}
