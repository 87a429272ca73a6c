package org.jointwright.layout.exact;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;

/** Finds the cheapest whole cover by branching: a tile is taken or it is not. */
final class Branching {
  private static final double WHOLE = 1e-6;

  private final List<Tile> tiles;
  private final Function<List<Program.Held>, Program.Answer> program;
  private final Tries tries;

  /**
   * What was found.
   *
   * @param bound no cover costs less than this, ft; infinite where there is none below what was
   *     asked
   * @param cover the cheapest cover met, empty where none is below what was asked
   */
  record Found(double bound, List<Tile> cover) {}

  private record Open(double bound, List<Program.Held> held) {}

  /**
   * A search.
   *
   * @param program the cheapest shares of the tiles, some being held
   */
  Branching(List<Tile> tiles, Function<List<Program.Held>, Program.Answer> program, Tries tries) {
    this.tiles = tiles;
    this.program = program;
    this.tries = tries;
  }

  /** The cheapest cover that costs less than {@code below}, ft. */
  Found find(double below) {
    double best = below;
    List<Tile> cover = List.of();
    // What the solver gave up on may hold a cover as cheap as its bound.
    double unsettled = Double.POSITIVE_INFINITY;
    Deque<Open> open = new ArrayDeque<>(List.of(new Open(0, List.of())));
    while (!open.isEmpty()) {
      if (!tries.more()) {
        double left = Math.min(best, unsettled);
        for (Open o : open) {
          left = Math.min(left, o.bound());
        }
        return new Found(left, cover);
      }
      Open o = open.pop();
      if (o.bound() >= best - WHOLE) {
        continue;
      }
      switch (program.apply(o.held())) {
        case Program.Impossible none -> {}
        case Program.Unsettled gaveUp -> unsettled = Math.min(unsettled, o.bound());
        case Program.Relaxed relaxed -> {
          int split = split(relaxed.shares());
          if (relaxed.cost() >= best - WHOLE) {
            // Nothing in it is cheaper.
            continue;
          } else if (split < 0) {
            best = relaxed.cost();
            cover = taken(relaxed.shares());
          } else {
            open.push(new Open(relaxed.cost(), with(o.held(), split, false)));
            open.push(new Open(relaxed.cost(), with(o.held(), split, true)));
          }
        }
      }
    }
    double least = cover.isEmpty() ? Double.POSITIVE_INFINITY : best;
    return new Found(Math.min(least, unsettled), cover);
  }

  /** The tile nearest to whole among those that are not; the larger one of equals. */
  private int split(List<Double> shares) {
    int best = -1;
    for (int k = 0; k < shares.size(); k++) {
      boolean part = shares.get(k) > WHOLE && shares.get(k) < 1 - WHOLE;
      if (part && (best < 0 || shares.get(k) > shares.get(best) + WHOLE)) {
        best = k;
      }
    }
    return best;
  }

  private List<Tile> taken(List<Double> shares) {
    List<Tile> cover = new ArrayList<>();
    for (int k = 0; k < shares.size(); k++) {
      if (shares.get(k) > 0.5) {
        cover.add(tiles.get(k));
      }
    }
    return cover;
  }

  private static List<Program.Held> with(List<Program.Held> held, int tile, boolean whole) {
    List<Program.Held> more = new ArrayList<>(held);
    more.add(new Program.Held(tile, whole));
    return more;
  }
}
