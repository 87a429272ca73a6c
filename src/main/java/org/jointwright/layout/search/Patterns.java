package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jointwright.layout.piece.Axes;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Point;

/** Whole patterns of cuts on one piece. A pattern is one step of the search. */
final class Patterns {
  private Patterns() {}

  /**
   * Grids of parallel lines along every pair of main directions, shortest first.
   *
   * @param ask run now and then; it may end the search
   */
  static List<Pattern> grids(Piece piece, List<Point> hints, Move.Reach reach, Runnable ask) {
    List<Pattern> found = new ArrayList<>();
    for (Point u : Axes.of(piece)) {
      Rows rows = new Rows(piece, u, hints);
      Rows columns = new Rows(piece, u.left(), hints);
      for (List<Double> r : variants(rows, columns.span() / columns.fewest())) {
        ask.run();
        List<Move> first = rows.moves(r, reach);
        for (List<Double> c : variants(columns, rows.span() / rows.fewest())) {
          List<Move> both = new ArrayList<>(first);
          both.addAll(columns.moves(c, reach));
          if (!both.isEmpty()) {
            found.add(Pattern.on(piece, both));
          }
        }
      }
    }
    return sorted(found);
  }

  private static Set<List<Double>> variants(Rows rows, double cross) {
    double s = rows.spacing();
    Set<List<Double>> fixed = new LinkedHashSet<>();
    if (!rows.anchorPlaces().isEmpty()) {
      fixed.add(rows.thinned(0.6 * s));
      fixed.add(rows.thinned(0.35 * s));
      fixed.add(rows.longSides(0.6 * s));
      fixed.add(rows.anchorPlaces());
      fixed.add(rows.eased());
      fixed.add(rows.shifted(0.5));
      fixed.add(rows.shifted(-0.5));
      if (rows.anchorPlaces().size() <= 4) {
        for (double v : rows.anchorPlaces()) {
          fixed.add(List.of(v));
        }
      }
    }
    Set<List<Double>> places = new LinkedHashSet<>();
    for (int n : rows.counts(cross)) {
      places.add(rows.even(n));
    }
    for (List<Double> f : fixed) {
      places.add(rows.divided(f, 0));
      places.add(rows.divided(f, 1));
    }
    return places;
  }

  /**
   * Parallel lines one way only.
   *
   * @param ask as above
   */
  static List<Pattern> bands(Piece piece, List<Point> hints, Move.Reach reach, Runnable ask) {
    List<Pattern> found = new ArrayList<>();
    for (Point axis : Axes.of(piece)) {
      for (Point u : List.of(axis, axis.left())) {
        ask.run();
        Rows rows = new Rows(piece, u, hints);
        double cross = new Rows(piece, u.left(), hints).span();
        for (List<Double> places : variants(rows, cross)) {
          List<Move> moves = rows.moves(places, reach);
          if (!moves.isEmpty()) {
            found.add(Pattern.on(piece, moves));
          }
        }
      }
    }
    return sorted(found);
  }

  /** Grids and bands by shares of opposite sides. */
  static List<Pattern> fractions(Piece piece, Move.Reach reach) {
    Fractions f = Fractions.of(piece);
    if (!f.isFourSided()) {
      return List.of();
    }
    List<Pattern> found = new ArrayList<>();
    for (int a = f.fewest(0); a <= f.fewest(0) + 2; a++) {
      for (int b = f.fewest(1); b <= f.fewest(1) + 2; b++) {
        List<Move> grid = f.grid(a, b, reach);
        if (!grid.isEmpty()) {
          found.add(Pattern.on(piece, grid));
        }
      }
    }
    return sorted(found);
  }

  private static List<Pattern> sorted(List<Pattern> found) {
    found.sort(Comparator.comparingDouble(Pattern::feet));
    return found;
  }
}
