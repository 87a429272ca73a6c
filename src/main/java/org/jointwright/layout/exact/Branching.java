package org.jointwright.layout.exact;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Finds the cheapest whole cover by branching: a tile is taken or it is not. */
final class Branching {
  private static final double WHOLE = 1e-6;

  private final List<Tile> tiles;
  private final Program program;
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

  Branching(List<Tile> tiles, Program program, Tries tries) {
    this.tiles = tiles;
    this.program = program;
    this.tries = tries;
  }

  /** The cheapest cover that costs less than {@code below}, ft. */
  Found find(double below) {
    double best = below;
    List<Tile> cover = List.of();
    Deque<Open> open = new ArrayDeque<>(List.of(new Open(0, List.of())));
    while (!open.isEmpty()) {
      if (!tries.more()) {
        double left = best;
        for (Open o : open) {
          left = Math.min(left, o.bound());
        }
        return new Found(left, cover);
      }
      Open o = open.pop();
      if (o.bound() >= best - WHOLE) {
        continue;
      }
      Optional<Program.Relaxed> relaxed = program.solve(o.held());
      if (relaxed.isEmpty() || relaxed.get().cost() >= best - WHOLE) {
        continue;
      }
      List<Double> shares = relaxed.get().shares();
      int split = split(shares);
      if (split < 0) {
        best = relaxed.get().cost();
        cover = taken(shares);
        continue;
      }
      double bound = relaxed.get().cost();
      open.push(new Open(bound, with(o.held(), split, false)));
      open.push(new Open(bound, with(o.held(), split, true)));
    }
    return new Found(cover.isEmpty() ? Double.POSITIVE_INFINITY : best, cover);
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
