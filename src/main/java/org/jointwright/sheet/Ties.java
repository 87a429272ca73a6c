package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jointwright.measure.Length;
import org.jointwright.measure.Rounding;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The diagonals that, with the sides, hold every corner in its place. Both diagonals of each slab
 * of four corners, to check that it is square; then, as long as a corner could wander when every
 * figure is off by its rounding, the one more pull between two corners that helps most. What the
 * rounding of just these figures still puts off is mended by {@link Drift}, what they leave two
 * places by {@link Mirrored}.
 *
 * @param pulls the diagonals
 * @param offsets corners that have to be told from a string instead
 */
record Ties(List<Tie> pulls, List<Offset> offsets) {
  /** What rounding to 1/8 in leaves of doubt: a twelfth of the square of the step; inches. */
  static final double ROUNDING = 0.125 / Math.sqrt(12);

  /** How far a corner may wander; inches, one standard deviation. */
  private static final double ENOUGH = 0.075;

  /** A corner that may wander by more than this is held by nothing; inches. */
  private static final double LOOSE = 1;

  /** Copies the lists. */
  Ties {
    pulls = List.copyOf(pulls);
    offsets = List.copyOf(offsets);
  }

  /** A corner told from a string. */
  record Offset(LetteredCorner corner, Whereabouts.Off where) {}

  /** A pull of the tape from corner to corner. */
  record Tie(LetteredCorner from, LetteredCorner to) {
    double length() {
      return from.at().distance(to.at());
    }
  }

  /**
   * The ties of a plan.
   *
   * @param rounding to what step figures are printed
   */
  static Ties of(Plan plan, Lettering lettering, Rounding rounding) {
    List<LetteredCorner> corners = lettering.corners();
    Certainty certainty = new Certainty(corners.stream().map(LetteredCorner::at).toList());
    DoubleUnaryOperator told = d -> rounding.round(Length.inches(d)).inches();
    for (Tape t : lettering.tapes()) {
      pull(certainty, corners, new Tie(t.from(), t.to()), told);
      for (LetteredCorner c : lettering.between(t)) {
        pull(certainty, corners, new Tie(t.from(), c), told);
        certainty.inLine(corners.indexOf(t.from()), corners.indexOf(c), corners.indexOf(t.to()));
      }
    }
    List<Tie> ties = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      List<LetteredCorner> own = of(slab.outline().ring(), lettering);
      if (own.size() == 4) {
        ties.add(tie(own.get(0), own.get(2)));
        ties.add(tie(own.get(1), own.get(3)));
      }
    }
    ties.forEach(t -> pull(certainty, corners, t, told));
    List<Tie> candidates = candidates(plan, lettering, ties);
    addPulls(corners, certainty, told, candidates, ties);
    List<Offset> offsets = offsets(lettering, certainty);
    offsets.forEach(o -> tell(certainty, corners, o, told));
    int pulls = ties.size();
    int strings = offsets.size();
    new Mirrored(lettering, rounding.step().inches()).mend(candidates, ties, offsets);
    ties.subList(pulls, ties.size()).forEach(t -> pull(certainty, corners, t, told));
    offsets.subList(strings, offsets.size()).forEach(o -> tell(certainty, corners, o, told));
    new Drift(lettering, told, rounding.step().inches(), certainty).mend(candidates, ties, offsets);
    return new Ties(ties, offsets);
  }

  static void pull(
      Certainty certainty, List<LetteredCorner> corners, Tie tie, DoubleUnaryOperator told) {
    certainty.distance(
        corners.indexOf(tie.from()), corners.indexOf(tie.to()), told.applyAsDouble(tie.length()));
  }

  static void tell(
      Certainty certainty, List<LetteredCorner> corners, Offset offset, DoubleUnaryOperator told) {
    Whereabouts.Off where = offset.where();
    certainty.offset(
        corners.indexOf(where.tape().from()),
        corners.indexOf(offset.corner()),
        corners.indexOf(where.tape().to()),
        told.applyAsDouble(where.along()),
        Math.copySign(told.applyAsDouble(Math.abs(where.left())), where.left()));
  }

  private static void addPulls(
      List<LetteredCorner> corners,
      Certainty certainty,
      DoubleUnaryOperator told,
      List<Tie> candidates,
      List<Tie> ties) {
    int most = 3 * corners.size();
    while (certainty.worst() > ENOUGH && ties.size() < most && !candidates.isEmpty()) {
      Tie best = null;
      double gain = 0;
      for (Tie c : candidates) {
        double g =
            certainty.gain(corners.indexOf(c.from()), corners.indexOf(c.to()))
                / (1 + c.length() / 1200);
        if (g > gain) {
          gain = g;
          best = c;
        }
      }
      if (best == null) {
        break;
      }
      pull(certainty, corners, best, told);
      candidates.remove(best);
      ties.add(best);
    }
  }

  /** Corners that no pull holds, since all stand in one line, are told from a string. */
  private static List<Offset> offsets(Lettering lettering, Certainty certainty) {
    Sides sides = new Sides(lettering);
    List<Offset> offsets = new ArrayList<>();
    for (int i = 0; i < lettering.corners().size(); i++) {
      LetteredCorner c = lettering.corners().get(i);
      if (certainty.of(i) > LOOSE) {
        offsets.add(new Offset(c, sides.off("", c.at())));
      }
    }
    return offsets;
  }

  private static Tie tie(LetteredCorner a, LetteredCorner b) {
    return new Tie(a, b);
  }

  private static List<LetteredCorner> of(Ring ring, Lettering lettering) {
    List<LetteredCorner> out = new ArrayList<>();
    ring.vertices()
        .forEach(p -> lettering.cornerAt(p).filter(c -> !out.contains(c)).ifPresent(out::add));
    return out;
  }

  /** Pairs of corners: of one slab and its openings first; between slabs where those are apart. */
  private static List<Tie> candidates(Plan plan, Lettering lettering, List<Tie> known) {
    List<Tie> out = new ArrayList<>();
    List<LetteredCorner> all = lettering.corners();
    for (int i = 0; i < all.size(); i++) {
      for (int k = i + 1; k < all.size(); k++) {
        Tie tie = new Tie(all.get(i), all.get(k));
        if (known.contains(tie) || known.contains(new Tie(tie.to(), tie.from()))) {
          continue;
        }
        boolean side =
            lettering.tapes().stream()
                .anyMatch(
                    t ->
                        t.isStraight()
                            && t.carries(tie.from().at(), Lettering.SAME_PLACE)
                            && t.carries(tie.to().at(), Lettering.SAME_PLACE));
        if (!side && isOpen(plan, tie)) {
          out.add(tie);
        }
      }
    }
    return out;
  }

  /** Whether the tape can lie there: over slabs or open ground, not through a building. */
  private static boolean isOpen(Plan plan, Tie tie) {
    for (int i = 1; i < 12; i++) {
      Point p = tie.from().at().towards(tie.to().at(), i / 12.0);
      for (Slab slab : plan.slabs()) {
        for (Opening o : slab.openings()) {
          boolean walled = o.edges().values().stream().anyMatch(e -> e.needsIsolation());
          if (walled && o.outline().ring().contains(p)) {
            return false;
          }
        }
      }
    }
    return true;
  }
}
