package org.jointwright.layout.search;

import java.util.List;
import org.jointwright.layout.piece.Draft;

/** The whole search for one slab. */
public final class Search {
  private Search() {}

  /**
   * The best draft that comes of {@code start}.
   *
   * @param metric whether marks stand at whole 10 mm rather than whole inches
   */
  public static Draft best(Draft start, Score score, boolean metric) {
    List<Draft> found = new Beam(score).search(start);
    return found.isEmpty() ? start : found.getFirst();
  }
}
