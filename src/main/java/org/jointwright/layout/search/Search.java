package org.jointwright.layout.search;

import java.util.List;
import org.jointwright.layout.piece.Draft;

/** The whole search for one slab. */
public final class Search {
  /** How many of the beam's best are climbed from. */
  private static final int CLIMBED = 6;

  /** What is this much dearer than the best is not climbed from. */
  private static final double WORTH = 1.3;

  private Search() {}

  /**
   * The best draft that comes of {@code start}.
   *
   * @param metric whether marks stand at whole 10 mm rather than whole inches
   */
  public static Draft best(Draft start, Score score, boolean metric) {
    List<Draft> found = new Beam(score).search(start);
    Draft best = found.isEmpty() ? start : found.getFirst();
    for (Draft d : found.subList(0, Math.min(CLIMBED, found.size()))) {
      if (score.of(d) > WORTH * score.of(best)) {
        break;
      }
      Draft better = new Climb(start, score).climb(d);
      if (score.of(better) < score.of(best)) {
        best = better;
      }
    }
    return new Tidy(start, score, metric).tidy(best);
  }
}
