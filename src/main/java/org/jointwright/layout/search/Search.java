package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Draft;

/** The whole search for one slab. */
public final class Search {
  /** How many of the beam's best, and of its near misses, are climbed from. */
  private static final int CLIMBED = 5;

  /** What is this much dearer than the best is not climbed from. */
  private static final double WORTH = 1.3;

  private Search() {}

  /**
   * The best draft that comes of {@code start}.
   *
   * @param metric whether marks stand at whole 10 mm rather than whole inches
   */
  public static Draft best(Draft start, Score score, boolean metric) {
    Beam beam = new Beam(score);
    List<Draft> finished = beam.search(start);
    Draft best = finished.isEmpty() ? start : finished.getFirst();
    List<Draft> from = new ArrayList<>();
    for (Draft d : finished.subList(0, Math.min(CLIMBED, finished.size()))) {
      if (score.of(d) <= WORTH * score.of(best)) {
        from.add(d);
      }
    }
    double bound = finished.isEmpty() ? Double.POSITIVE_INFINITY : score.of(best);
    beam.nearMisses().stream()
        .filter(d -> d.tally().cost() < bound)
        .limit(CLIMBED)
        .map(new Mend(score)::mend)
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
