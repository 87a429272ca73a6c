package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Point;

/** What may be tried next on a draft. */
final class Choices {
  private Choices() {}

  /**
   * For a slab not cut yet but for the user's joints: its largest piece.
   *
   * @param hints places that lines should pass
   * @param rare whether moves that seldom pay are tried too
   */
  static List<Pattern> first(Draft draft, List<Point> hints, boolean rare) {
    Piece piece = draft.pieces().getFirst();
    for (Piece p : draft.pieces()) {
      piece = p.area() > piece.area() ? p : piece;
    }
    List<Pattern> all = new ArrayList<>(single(draft, piece, rare));
    all.addAll(Corners.flares(piece));
    all.addAll(Radials.griddedStars(piece));
    all.addAll(Radials.stars(piece));
    all.addAll(Ribbon.of(piece));
    all.addAll(Spokes.of(piece));
    all.addAll(Patterns.fractions(piece, Move.Reach.PIECE));
    all.addAll(Patterns.grids(piece, hints, Move.Reach.THROUGH));
    all.addAll(Patterns.bands(piece, hints, Move.Reach.THROUGH));
    return all;
  }

  /** For a piece of a draft. */
  static List<Pattern> next(Draft draft, Piece piece, boolean rare) {
    List<Point> tees = draft.tally().tees().stream().map(t -> t.at()).toList();
    List<Point> near = tees.stream().filter(t -> piece.outer().distance(t) < 1).toList();
    List<Pattern> all = new ArrayList<>(Radials.turnedStars(piece));
    all.addAll(Patterns.bands(piece, near, Move.Reach.PIECE));
    all.addAll(Patterns.grids(piece, near, Move.Reach.PIECE));
    all.addAll(Patterns.bands(piece, near, Move.Reach.THROUGH));
    all.addAll(Ribbon.of(piece));
    all.addAll(Spokes.of(piece));
    all.addAll(Patterns.fractions(piece, Move.Reach.PIECE));
    all.addAll(single(draft, piece, rare));
    return all;
  }

  private static List<Pattern> single(Draft draft, Piece piece, boolean rare) {
    List<Pattern> all = new ArrayList<>();
    all.addAll(Cuts.fromCorners(piece));
    all.addAll(Corners.acrossSharp(piece));
    all.addAll(Cuts.fromTees(draft));
    all.addAll(Radials.single(piece));
    if (rare) {
      all.addAll(Corners.kites(piece, draft.tally().tees().stream().map(t -> t.at()).toList()));
      all.addAll(Cuts.turnedFromTees(draft));
      all.addAll(Cuts.oneOfEven(piece));
      all.addAll(Cuts.joining(draft, piece));
    }
    return all;
  }
}
