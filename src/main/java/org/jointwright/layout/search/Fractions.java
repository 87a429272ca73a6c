package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Grids on a four-sided piece: lines from share to share of opposite sides, so that they fan out
 * with sides that are not parallel. A side may be many edges in a row without a corner between.
 */
final class Fractions {
  private static final double CORNER = 20;

  private final Piece piece;
  private final List<List<Edge>> sides;

  private Fractions(Piece piece, List<List<Edge>> sides) {
    this.piece = piece;
    this.sides = sides;
  }

  /** The sides of a piece; fewer or more than four give no grids. */
  static Fractions of(Piece piece) {
    Loop loop = piece.outer();
    int n = loop.size();
    List<Integer> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double turn = 180 - loop.angle(i);
      if (turn > CORNER) {
        corners.add(i);
      } else if (turn < -CORNER) {
        return new Fractions(piece, List.of());
      }
    }
    List<List<Edge>> sides = new ArrayList<>();
    for (int k = 0; k < corners.size(); k++) {
      List<Edge> side = new ArrayList<>();
      int end = k + 1 < corners.size() ? corners.get(k + 1) : corners.getFirst() + n;
      for (int i = corners.get(k); i < end; i++) {
        side.add(loop.edge(i));
      }
      sides.add(side);
    }
    return new Fractions(piece, sides);
  }

  boolean isFourSided() {
    return sides.size() == 4 && piece.holes().isEmpty();
  }

  /** The edges of a side in order round the piece. */
  List<Edge> side(int number) {
    return sides.get(number);
  }

  private double length(int side) {
    return sides.get(side).stream().mapToDouble(Edge::length).sum();
  }

  private Point at(int side, double share) {
    double left = share * length(side);
    for (Edge e : sides.get(side)) {
      double length = e.length();
      if (left <= length) {
        return e.at(left / length);
      }
      left -= length;
    }
    return sides.get(side).getLast().end();
  }

  /** The fewest parts of sides {@code which} and the one opposite. */
  int fewest(int which) {
    double longest = Math.max(length(which), length(which + 2));
    double spacing = piece.ground().limits().spacing() + Limits.SHADE;
    return Math.max(1, (int) Math.ceil(longest / spacing));
  }

  /** The lines that cut side {@code which} and the one opposite into {@code parts}. */
  List<Move> lines(int which, int parts, Move.Reach reach) {
    List<Move> moves = new ArrayList<>();
    for (int k = 1; k < parts; k++) {
      Point a = at(which, (double) k / parts);
      Point b = at(which + 2, 1 - (double) k / parts);
      // The two sides of a slit lie on each other.
      if (a.distance(b) > 1) {
        moves.add(Move.between(a, b, reach));
      }
    }
    return moves;
  }

  /** A grid of so many parts each way. */
  List<Move> grid(int along, int across, Move.Reach reach) {
    List<Move> moves = new ArrayList<>(lines(0, along, reach));
    for (Move m : lines(1, across, reach)) {
      moves.add(reach == Move.Reach.PIECE ? m.reaching(Move.Reach.THROUGH) : m);
    }
    return moves;
  }
}
