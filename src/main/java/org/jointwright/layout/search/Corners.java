package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Patterns at corners: flared joints from those of a hole, a cut across a sharp one. */
final class Corners {
  private static final double[] FLARES = {0, 5, 8, 12, 16};
  private static final double[] LEGS = {0.4, 0.55, 0.7, 0.85, 1.0};
  private static final double SHARP = 75;
  private static final double IN = 3;

  private Corners() {}

  /** Two joints from each corner of each hole, spread so that the panels between widen. */
  static List<Pattern> flares(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    if (piece.holes().isEmpty() || piece.faults().corners().size() > 12) {
      return found;
    }
    for (double degrees : FLARES) {
      List<Move> moves = new ArrayList<>();
      for (Faults.Corner c : piece.faults().corners()) {
        if (c.loop() > 0) {
          Loop loop = piece.loop(c.loop());
          double turn = Math.toRadians(degrees);
          Point one = loop.edge(c.vertex() - 1).direction(1).turned(turn);
          Point two = loop.edge(c.vertex()).direction(0).times(-1).turned(-turn);
          for (Point d : List.of(one, two)) {
            moves.add(
                new Move(
                    new Carrier.Line(c.at(), d), c.at().plus(d.times(IN)), Move.Reach.THROUGH));
          }
        }
      }
      if (!moves.isEmpty()) {
        found.add(Pattern.on(piece, moves));
      }
    }
    return found;
  }

  /** A cut square to the bisector of each sharp corner. */
  static List<Pattern> acrossSharp(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    Loop loop = piece.outer();
    double spacing = piece.ground().limits().spacing();
    for (int i = 0; i < loop.size(); i++) {
      Edge in = loop.edge(i - 1);
      Edge out = loop.edge(i);
      if (loop.angle(i) < SHARP && in instanceof Segment && out instanceof Segment) {
        for (double leg : LEGS) {
          double far = leg * spacing;
          if (far < in.length() && far < out.length()) {
            Point a = in.at(1 - far / in.length());
            Point b = out.at(far / out.length());
            found.add(Pattern.of(Move.between(a, b, Move.Reach.PIECE)));
          }
        }
      }
    }
    return found;
  }
}
