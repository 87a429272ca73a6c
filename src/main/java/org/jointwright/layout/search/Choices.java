package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
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
   * @param ask run before each kind of pattern and more often; it may end the search
   */
  static List<Pattern> first(Draft draft, List<Point> hints, boolean rare, Runnable ask) {
    Piece piece =
        draft.pieces().stream().reduce((a, b) -> b.area() > a.area() ? b : a).orElseThrow();
    return gathered(
        ask,
        () -> single(draft, piece, rare, ask),
        () -> Corners.flares(piece),
        () -> Radials.griddedStars(piece),
        () -> Radials.stars(piece),
        () -> Ribbon.of(piece),
        () -> Spokes.of(piece),
        () -> Patterns.fractions(piece, Move.Reach.PIECE),
        () -> Patterns.grids(piece, hints, Move.Reach.THROUGH, ask),
        () -> Patterns.bands(piece, hints, Move.Reach.THROUGH, ask));
  }

  /**
   * For a piece of a draft.
   *
   * @param rare whether moves that seldom pay are tried too
   * @param ask as above
   */
  static List<Pattern> next(Draft draft, Piece piece, boolean rare, Runnable ask) {
    List<Point> near = tees(draft).stream().filter(t -> piece.outer().distance(t) < 1).toList();
    return gathered(
        ask,
        () -> Radials.turnedStars(piece),
        () -> Patterns.bands(piece, near, Move.Reach.PIECE, ask),
        () -> Patterns.grids(piece, near, Move.Reach.PIECE, ask),
        () -> Patterns.bands(piece, near, Move.Reach.THROUGH, ask),
        () -> Ribbon.of(piece),
        () -> Spokes.of(piece),
        () -> Patterns.fractions(piece, Move.Reach.PIECE),
        () -> single(draft, piece, rare, ask));
  }

  private static List<Pattern> single(Draft draft, Piece piece, boolean rare, Runnable ask) {
    List<Pattern> all =
        gathered(
            ask,
            () -> Cuts.fromCorners(piece),
            () -> Corners.acrossSharp(piece),
            () -> Cuts.fromTees(draft),
            () -> Radials.single(piece));
    if (rare) {
      all.addAll(
          gathered(
              ask,
              () -> Corners.kites(piece, tees(draft)),
              () -> Cuts.turnedFromTees(draft),
              () -> Cuts.oneOfEven(piece),
              () -> Cuts.joining(draft, piece)));
    }
    return all;
  }

  private static List<Point> tees(Draft draft) {
    return draft.tally().tees().stream().map(t -> t.at()).toList();
  }

  @SafeVarargs
  private static List<Pattern> gathered(Runnable ask, Supplier<List<Pattern>>... kinds) {
    List<Pattern> all = new ArrayList<>();
    for (Supplier<List<Pattern>> kind : kinds) {
      ask.run();
      all.addAll(kind.get());
    }
    return all;
  }
}
