package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * First cuts for a slab of which nothing sound came in any other way: ladders of joints between two
 * of its sides, tips of sharp corners cut off from the corners beside them, fans of cuts across a
 * sharp corner, and joints that turn round an opening too narrow for a panel between them.
 */
final class Beginnings {
  /** How far apart the cuts of a fan are on the sides of its corner, shares of the spacing. */
  private static final double[] LEGS = {0.5, 0.6, 0.7, 0.8, 0.9, 1.0};

  private static final int MOST_CUTS = 4;

  /** Half of a corner wider than this is no acute angle, degrees. */
  private static final double HALVED = 120;

  private static final double IN = 3;

  /** How far a square corner may be off, degrees. */
  private static final double SQUARE = 3;

  private Beginnings() {}

  /** The drafts that come of each beginning by itself on each broken piece. */
  static List<Draft> of(Draft start) {
    List<Draft> found = new ArrayList<>();
    for (Piece p : start.pieces()) {
      if (!p.faults().none()) {
        for (Pattern pattern : patterns(p)) {
          Draft d = start.cutAll(pattern.moves());
          if (d != start) {
            found.add(d);
          }
        }
      }
    }
    return found;
  }

  /** The beginnings on one piece. */
  static List<Pattern> patterns(Piece piece) {
    List<Pattern> all = new ArrayList<>(pinwheels(piece));
    if (slants(piece.outer())) {
      all.addAll(Ladder.of(piece));
    }
    all.addAll(tips(piece));
    all.addAll(fans(piece));
    return all;
  }

  /**
   * Four joints round each opening of four corners, each on along the side before its corner, or
   * each back along the one after: no two run beside each other.
   */
  static List<Pattern> pinwheels(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    for (int which = 0; which < 2; which++) {
      List<Move> moves = new ArrayList<>();
      for (int l = 1; l < piece.loopCount(); l++) {
        int loop = l;
        List<Faults.Corner> corners =
            piece.faults().corners().stream().filter(c -> c.loop() == loop).toList();
        if (corners.size() == 4) {
          for (Faults.Corner c : corners) {
            moves.add(Corners.splayed(piece, c, 0).get(which));
          }
        }
      }
      if (!moves.isEmpty()) {
        found.add(Pattern.on(piece, moves));
      }
    }
    return found;
  }

  /**
   * Cuts square to the bisector of a sharp corner from the wide or inside corner at the end of one
   * of its sides: all together, and each alone.
   */
  static List<Pattern> tips(Piece piece) {
    List<Move> moves = new ArrayList<>();
    Loop loop = piece.outer();
    for (int i = 0; i < loop.size(); i++) {
      if (isSharp(loop, i)) {
        Edge in = loop.edge(i - 1);
        Edge out = loop.edge(i);
        boolean before = loop.angle(i - 1) > HALVED && in.length() < out.length();
        boolean after = loop.angle(i + 1) > HALVED && out.length() < in.length();
        if (before || after) {
          double leg = Math.min(in.length(), out.length());
          moves.add(across(in, out, leg));
        }
      }
    }
    List<Pattern> found = new ArrayList<>();
    if (!moves.isEmpty()) {
      found.add(Pattern.on(piece, moves));
    }
    if (moves.size() > 1) {
      moves.forEach(m -> found.add(Pattern.on(piece, List.of(m))));
    }
    return found;
  }

  /**
   * Cuts square to the bisector of each sharp corner, evenly apart; beyond the first, a joint along
   * the bisector or none.
   */
  static List<Pattern> fans(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    Loop loop = piece.outer();
    double spacing = piece.ground().limits().spacing();
    for (int i = 0; i < loop.size(); i++) {
      if (isSharp(loop, i)) {
        Edge in = loop.edge(i - 1);
        Edge out = loop.edge(i);
        double most = Math.min(in.length(), out.length());
        List<Double> legs = new ArrayList<>();
        for (double leg : LEGS) {
          legs.add(leg * spacing);
        }
        for (int n = 2; n <= MOST_CUTS; n++) {
          // Evenly to the end of the shorter side.
          if (most / n < spacing && most / n > LEGS[0] * spacing) {
            legs.add(most / n);
          }
        }
        for (double leg : legs) {
          List<Move> moves = new ArrayList<>();
          for (int n = 1; n <= MOST_CUTS && n * leg <= most + 0.01; n++) {
            moves.add(across(in, out, Math.min(n * leg, most)));
            found.add(Pattern.on(piece, moves));
            if (n > 1) {
              found.add(Pattern.on(piece, split(moves, loop, i)));
            }
          }
        }
      }
    }
    return found;
  }

  /** The cuts of a fan and a joint along the bisector that goes on from the first of them. */
  private static List<Move> split(List<Move> cuts, Loop loop, int i) {
    List<Move> all = new ArrayList<>(cuts);
    Point bisector = loop.edge(i).direction(0).turned(Math.toRadians(loop.angle(i) / 2));
    Carrier line = new Carrier.Line(cuts.getFirst().seed(), bisector);
    for (int k = 0; k < cuts.size(); k++) {
      Point from = cuts.get(k).seed();
      all.add(new Move(line, from.plus(bisector.times(IN)), Move.Reach.PIECE));
    }
    return all;
  }

  /** Whether a corner is not square: where all are, grids do. */
  private static boolean slants(Loop loop) {
    for (int i = 0; i < loop.size(); i++) {
      double off = Math.IEEEremainder(loop.angle(i), 90);
      if (Math.abs(off) > SQUARE) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSharp(Loop loop, int i) {
    return loop.angle(i) < Corners.SHARP
        && loop.edge(i - 1) instanceof Segment
        && loop.edge(i) instanceof Segment;
  }

  /** The cut that leaves both sides at the same distance from their corner. */
  private static Move across(Edge in, Edge out, double leg) {
    Point a = leg >= in.length() ? in.start() : in.at(1 - leg / in.length());
    Point b = leg >= out.length() ? out.end() : out.at(leg / out.length());
    return Move.between(a, b, Move.Reach.PIECE);
  }
}
