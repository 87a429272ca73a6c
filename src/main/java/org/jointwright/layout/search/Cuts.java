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
}
