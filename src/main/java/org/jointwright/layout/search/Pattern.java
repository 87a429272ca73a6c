package org.jointwright.layout.search;

import java.util.List;
import org.jointwright.layout.piece.Chord;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;

/**
 * Cuts made together as one step of the search.
 *
 * @param moves in order
 * @param feet the least length they add, ft; 0 where that is not worked out
 */
record Pattern(List<Move> moves, double feet) {
  /** Copies the list. */
  Pattern {
    moves = List.copyOf(moves);
  }

  /** A pattern on a piece, its length taken inside it. */
  static Pattern on(Piece piece, List<Move> moves) {
    double inches = 0;
    for (Move m : moves) {
      inches += Chord.across(piece, m.carrier(), m.seed()).map(c -> c.length()).orElse(0.0);
    }
    return new Pattern(moves, inches / 12);
  }

  /** Whether it is one cut and no whole pattern. */
  boolean isSingle() {
    return feet == 0;
  }

  /** One cut. */
  static Pattern of(Move move) {
    return new Pattern(List.of(move), 0);
  }
}
