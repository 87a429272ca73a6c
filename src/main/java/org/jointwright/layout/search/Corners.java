package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Chord;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Patterns at corners: flared joints from those of a hole, a cut across a sharp one. */
final class Corners {
  /** How far aside the end of a flared joint may stand: a share of its length, and inches. */
  private static final double MOST_SPLAY = 0.35;

  private static final double WIDEST = 60;

  private static final double STEP = 3;
  private static final double[] LEGS = {0.4, 0.55, 0.7, 0.85, 1.0};
  static final double SHARP = 75;

  /** The same for kites where sides slant: the joints of a grid would meet those too flat. */
  private static final double SQUARE = 95;

  private static final double IN = 3;

  /** The cosine of how far a kite's third arm may turn off the bisector: 40 degrees. */
  private static final double ONWARD = Math.cos(Math.toRadians(40));

  private Corners() {}

  /** Two joints from each corner of each hole, spread alike so that the panels between widen. */
  static List<Pattern> flares(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    List<Faults.Corner> corners = piece.faults().corners();
    if (piece.holes().isEmpty() || corners.size() > 12) {
      return found;
    }
    double reach = Double.POSITIVE_INFINITY;
    for (Faults.Corner c : corners) {
      for (Move m : c.loop() > 0 ? splayed(piece, c, 0) : List.<Move>of()) {
        double far =
            Chord.across(piece, m.carrier(), m.seed()).map(x -> x.path().length()).orElse(0.0);
        reach = far > 0 ? Math.min(reach, far) : reach;
      }
    }
    // Whole inches at the nearest edge, so that the marks there are easily measured.
    for (double aside = 0; aside <= MOST_SPLAY * reach && aside <= WIDEST; aside += STEP) {
      List<Move> moves = new ArrayList<>();
      for (Faults.Corner c : corners) {
        if (c.loop() > 0) {
          moves.addAll(splayed(piece, c, Math.atan2(aside, reach)));
        }
      }
      if (!moves.isEmpty()) {
        found.add(Pattern.on(piece, moves));
      }
    }
    return found;
  }

  /**
   * The two joints from a corner that go on along its sides, turned away from each other's side.
   */
  static List<Move> splayed(Piece piece, Faults.Corner c, double turn) {
    Loop loop = piece.loop(c.loop());
    Point one = loop.edge(c.vertex() - 1).direction(1).turned(turn);
    Point two = loop.edge(c.vertex()).direction(0).times(-1).turned(-turn);
    List<Move> moves = new ArrayList<>();
    for (Point d : List.of(one, two)) {
      Carrier line = new Carrier.Line(c.at(), d);
      moves.add(new Move(line, c.at().plus(d.times(IN)), Move.Reach.THROUGH));
    }
    return moves;
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

  /**
   * Kites: joints square to both edges of each sharp corner, and of each square one where sides
   * slant, which meet on its bisector, where a third one goes on.
   */
  static List<Pattern> kites(Piece piece, List<Point> tees) {
    List<Pattern> found = new ArrayList<>();
    Loop loop = piece.outer();
    double spacing = piece.ground().limits().spacing();
    double widest = piece.ground().axes().size() > 1 ? SQUARE : SHARP;
    for (int i = 0; i < loop.size(); i++) {
      Edge in = loop.edge(i - 1);
      Edge out = loop.edge(i);
      if (loop.angle(i) < widest && in instanceof Segment && out instanceof Segment) {
        Point corner = out.start();
        Point bisector = out.direction(0).turned(Math.toRadians(loop.angle(i) / 2));
        double stretch = 1 / Math.cos(Math.toRadians(loop.angle(i) / 2));
        for (double leg : LEGS) {
          double far = leg * spacing;
          Point bend = corner.plus(bisector.times(far * stretch));
          if (far < in.length() && far < out.length() && piece.contains(bend)) {
            Point a = in.at(1 - far / in.length());
            Point b = out.at(far / out.length());
            found.addAll(ys(piece, Move.bent(a, bend, b), bisector, tees));
          }
        }
      }
    }
    return found;
  }

  /** A bent cut and, each for itself, the ways in which a third arm may go on from its bend. */
  private static List<Pattern> ys(Piece piece, Move bent, Point bisector, List<Point> tees) {
    Point bend = bent.seed();
    List<Point> tried = new ArrayList<>(List.of(bisector));
    for (Point tee : tees) {
      if (tee.distance(bend) > 12 && piece.outer().distance(tee) < 0.3) {
        tried.add(tee.minus(bend).unit());
      }
    }
    for (Point axis : piece.ground().axes()) {
      tried.addAll(List.of(axis, axis.left(), axis.times(-1), axis.left().times(-1)));
    }
    List<Point> ways = new ArrayList<>();
    for (Point u : tried) {
      if (u.dot(bisector) > ONWARD && ways.stream().noneMatch(w -> w.dot(u) > 0.9998)) {
        ways.add(u);
      }
    }
    List<Pattern> found = new ArrayList<>();
    for (Point u : ways) {
      Move third = new Move(new Carrier.Line(bend, u), bend.plus(u.times(IN)), Move.Reach.PIECE);
      found.add(new Pattern(List.of(bent, third), 0));
    }
    return found;
  }
}
