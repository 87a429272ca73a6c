package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Tally;

/** The whole search for one slab. */
public final class Search {
  /** How many of the beam's best, and of its near misses, are climbed from. */
  private static final int CLIMBED = 4;

  /** What is this much dearer than the best is not climbed from. */
  private static final double WORTH = 1.3;

  private static final double IDEAL = 1.005;

  private Search() {}

  /**
   * Whether nothing but pennies could be saved: even panels, no tee, no more length than needed.
   */
  private static boolean isIdeal(Draft start, Draft best, Score score) {
    Tally t = best.tally();
    double need = start.pieces().stream().mapToDouble(Score::need).sum();
    return Score.isClean(best)
        && score.sights().isAllMet(best)
        && t.slants() == 0
        && score.of(best) - start.tally().length() <= IDEAL * need;
  }

  /** A draft that comes of {@code start} quickly, to tell how hopeful it is. */
  public static Draft quick(Draft start, Score score) {
    Beam beam = new Beam(score);
    List<Draft> finished = beam.search(start);
    if (!finished.isEmpty()) {
      return finished.getFirst();
    }
    return beam.nearMisses().isEmpty() ? start : beam.nearMisses().getFirst();
  }

  /**
   * The best draft that comes of {@code start}.
   *
   * @param metric whether marks stand at whole 10 mm rather than whole inches
   */
  public static Draft best(Draft start, Score score, boolean metric) {
    Beam beam = new Beam(score);
    List<Draft> finished = beam.search(start);
    Draft best = finished.isEmpty() ? start : finished.getFirst();
    if (isIdeal(start, best, score)) {
      return new Tidy(start, score, metric).tidy(best);
    }
    List<Draft> from = new ArrayList<>();
    for (Draft d : finished.subList(0, Math.min(CLIMBED, finished.size()))) {
      if (score.of(d) <= WORTH * score.of(best)) {
        from.add(d);
      }
    }
    double bound = finished.isEmpty() ? Double.POSITIVE_INFINITY : score.of(best);
    List<Draft> near = beam.nearMisses().stream().filter(d -> d.tally().cost() < bound).toList();
    // A climb may mend what was nearly right without another joint.
    from.addAll(near.subList(0, Math.min(CLIMBED, near.size())));
    near.stream()
        .map(new Mend(score)::mend)
        .sorted(Comparator.comparingDouble(score::of))
        .limit(CLIMBED)
        .forEach(from::add);
    for (Draft d : from) {
      Draft better = new Climb(start, score).climb(d);
      if (score.of(better) < score.of(best)) {
        best = better;
      }
    }
    return new Tidy(start, score, metric).tidy(best);
  }
}
