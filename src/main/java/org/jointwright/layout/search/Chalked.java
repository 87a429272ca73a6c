package org.jointwright.layout.search;

import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * What a finisher chalks first on a round slab: radial and concentric lines on a band, lines even
 * about the middle of a disc or a ring. It stands though something cheaper by a little was found.
 */
public final class Chalked {
  /** How much dearer it may be: the finisher's eye stands above the cost for so much of it. */
  private static final double WORTH = 1.05;

  /** The same on a band, where what is cheaper are chords that leave the bends. */
  private static final double WORTH_ON_BAND = 1.1;

  private static final double SAME = 0.5;

  private Chalked() {}

  /** The chalked layout of {@code start}, or {@code best} where that is clearly cheaper. */
  public static Draft or(Draft best, Draft start, Score score) {
    if (start.pieces().size() != 1 || !start.lines().isEmpty()) {
      return best;
    }
    Piece piece = start.pieces().getFirst();
    Draft band = first(Ribbon.of(piece), WORTH_ON_BAND, best, start, score);
    return isRound(piece) ? first(Spokes.of(piece), WORTH, band, start, score) : band;
  }

  private static Draft first(
      List<Pattern> patterns, double worth, Draft best, Draft start, Score score) {
    Draft chalked = best;
    double least = Score.isClean(best) ? worth * score.of(best) : Double.POSITIVE_INFINITY;
    for (Pattern p : patterns) {
      Draft d = start.cutAll(p.moves());
      if (Score.isClean(d) && score.of(d) < least) {
        chalked = d;
        least = score.of(d);
      }
    }
    return chalked;
  }

  /** Whether all edges are arcs about one middle. */
  private static boolean isRound(Piece piece) {
    Point middle = null;
    for (int l = 0; l < piece.loopCount(); l++) {
      Loop loop = piece.loop(l);
      for (Edge e : loop.edges()) {
        if (!(e instanceof Arc a) || (middle != null && middle.distance(a.centre()) > SAME)) {
          return false;
        }
        middle = a.centre();
      }
    }
    return true;
  }
}
