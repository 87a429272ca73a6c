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
   */
  static List<Pattern> first(Draft draft, List<Point> hints) {
    Piece piece = draft.pieces().getFirst();
    for (Piece p : draft.pieces()) {
      piece = p.area() > piece.area() ? p : piece;
    }
    List<Pattern> all = new ArrayList<>(single(draft, piece));
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
  static List<Pattern> next(Draft draft, Piece piece) {
    List<Point> tees = draft.tally().tees().stream().map(t -> t.at()).toList();
    List<Point> near = tees.stream().filter(t -> piece.outer().distance(t) < 1).toList();
    List<Pattern> all = new ArrayList<>(Radials.turnedStars(piece));
    all.addAll(Patterns.bands(piece, near, Move.Reach.PIECE));
    all.addAll(Patterns.grids(piece, near, Move.Reach.PIECE));
    all.addAll(Patterns.bands(piece, near, Move.Reach.THROUGH));
    all.addAll(Ribbon.of(piece));
    all.addAll(Spokes.of(piece));
    all.addAll(Patterns.fractions(piece, Move.Reach.PIECE));
    all.addAll(single(draft, piece));
    return all;
  }

  private static List<Pattern> single(Draft draft, Piece piece) {
    List<Pattern> all = new ArrayList<>();
    all.addAll(Cuts.fromCorners(piece));
    all.addAll(Corners.acrossSharp(piece));
    all.addAll(Cuts.fromTees(draft));
    all.addAll(Radials.single(piece));
    return all;
  }
}
