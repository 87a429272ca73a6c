package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Axes;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.layout.piece.Tally;
import org.jointwright.shape.Point;

/** Single cuts: from inside corners and from open tees. */
final class Cuts {
  /** How far inside the piece a cut from a corner is seeded, inches. */
  private static final double IN = 3;

  private static final int MOST_JOINED = 12;

  /** A piece that takes more parts is divided by whole patterns. */
  private static final int MOST_EVEN = 5;

  /** The cosine of how far a cut may turn where it goes on from a tee: 45 degrees. */
  private static final double ONWARD = Math.cos(Math.toRadians(45));

  private Cuts() {}

  /** Cuts from the first inside corners of a piece, each on through and across one piece. */
  static List<Pattern> fromCorners(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    List<Faults.Corner> corners = piece.faults().corners();
    for (Faults.Corner c : corners.subList(0, Math.min(3, corners.size()))) {
      for (Point d : directions(piece, c)) {
        Carrier line = new Carrier.Line(c.at(), d);
        Point seed = c.at().plus(d.times(IN));
        found.add(Pattern.of(new Move(line, seed, Move.Reach.THROUGH)));
        found.add(Pattern.of(new Move(line, seed, Move.Reach.PIECE)));
      }
    }
    return found;
  }

  /** The directions in which a joint may leave an inside corner with two good angles. */
  private static List<Point> directions(Piece piece, Faults.Corner c) {
    Loop loop = piece.loop(c.loop());
    Point in = loop.edge(c.vertex() - 1).direction(1);
    Point out = loop.edge(c.vertex()).direction(0);
    List<Point> tried = new ArrayList<>();
    tried.add(in);
    tried.add(out.times(-1));
    tried.add(out.turned(Math.toRadians(c.angle() / 2)));
    for (Point axis : Axes.of(piece)) {
      tried.addAll(List.of(axis, axis.left(), axis.times(-1), axis.left().times(-1)));
    }
    for (Faults.Corner other : piece.faults().corners()) {
      double far = other.at().distance(c.at());
      if (far > 12 && far < 2 * piece.ground().limits().spacing()) {
        tried.add(other.at().minus(c.at()).unit());
      }
    }
    for (Point round : Radials.centres(piece)) {
      double far = round.distance(c.at());
      if (far > 12 && far < 2 * piece.ground().limits().spacing()) {
        tried.add(round.minus(c.at()).unit());
      }
    }
    List<Point> kept = new ArrayList<>();
    for (Point d : tried) {
      if (Rows.serves(piece, c, d) && kept.stream().noneMatch(k -> k.dot(d) > 0.9998)) {
        kept.add(d);
      }
    }
    return kept;
  }

  /** Cuts that go on from open tees. */
  static List<Pattern> fromTees(Draft draft) {
    List<Pattern> found = new ArrayList<>();
    for (Tally.Tee tee : draft.tally().tees()) {
      Carrier line = new Carrier.Line(tee.at(), tee.onward());
      Point seed = tee.at().plus(tee.onward().times(IN));
      found.add(Pattern.of(new Move(line, seed, Move.Reach.PIECE)));
      found.add(Pattern.of(new Move(line, seed, Move.Reach.THROUGH)));
    }
    return found;
  }

  /** Cuts that go on from open tees turned to run along or square to a main direction. */
  static List<Pattern> turnedFromTees(Draft draft) {
    List<Pattern> found = new ArrayList<>();
    for (Tally.Tee tee : draft.tally().tees()) {
      for (Point axis : draft.ground().axes()) {
        for (Point u : List.of(axis, axis.left(), axis.times(-1), axis.left().times(-1))) {
          double ahead = u.dot(tee.onward());
          if (ahead > ONWARD && ahead < 0.9998) {
            Carrier line = new Carrier.Line(tee.at(), u);
            found.add(Pattern.of(new Move(line, tee.at().plus(u.times(IN)), Move.Reach.PIECE)));
          }
        }
      }
    }
    return found;
  }

  /** Each line by itself of those that divide a piece evenly. */
  static List<Pattern> oneOfEven(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    for (Point axis : Axes.of(piece)) {
      for (Point u : List.of(axis, axis.left())) {
        Rows rows = new Rows(piece, u, List.of());
        for (int n = rows.fewest(); n <= rows.fewest() + 1 && n <= MOST_EVEN; n++) {
          for (double place : rows.even(n)) {
            rows.moves(List.of(place), Move.Reach.PIECE).forEach(m -> found.add(Pattern.of(m)));
          }
        }
      }
    }
    return found;
  }

  /** The shortest cuts across a piece from an open tee or inside corner to another. */
  static List<Pattern> joining(Draft draft, Piece piece) {
    List<Point> places = new ArrayList<>();
    for (Tally.Tee tee : draft.tally().tees()) {
      if (piece.outer().distance(tee.at()) < 0.3) {
        places.add(tee.at());
      }
    }
    for (Faults.Corner c : piece.faults().corners()) {
      places.add(c.at());
    }
    double far = 1.5 * piece.ground().limits().spacing();
    List<Move> moves = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      for (int k = i + 1; k < places.size(); k++) {
        double d = places.get(i).distance(places.get(k));
        if (d > 12 && d < far) {
          moves.add(Move.between(places.get(i), places.get(k), Move.Reach.PIECE));
        }
      }
    }
    return moves.stream()
        .filter(m -> piece.contains(m.seed()))
        .limit(MOST_JOINED)
        .map(Pattern::of)
        .toList();
  }
}
