package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.layout.piece.Bent;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.practice.Angles;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Dog-legs: a straight joint that would meet an arc of the slab's edge too flat turns where it
 * crosses another joint, and runs on from there towards the arc's radius. It may turn only where
 * others meet it: anywhere else the bend would leave one panel an inside corner (M3). Line and leg
 * are one cut, so that what ends on the line stays on it when cuts are made anew.
 */
final class Bends {
  /** How far a line may turn, degrees: beyond 30 it would be too flat to the joint it crosses. */
  private static final double[] TURNS = {6, 12, 18, 24, 29};

  private static final double MOST = Math.cos(Math.toRadians(30.5));

  /** Nearer to its centre than this an arc's radius says little, inches. */
  private static final double NEAR_CENTRE = 24;

  /** Crossings nearer than this to each other or to an end are one place, inches. */
  private static final double SAME = 1;

  /** At how many crossings from its end a line is turned. */
  private static final int NODES = 3;

  /** How many ends of one draft are turned at most. */
  private static final int ENDS = 8;

  private final Score score;
  private final int effort;

  /**
   * For drafts of one slab.
   *
   * @param effort how many cuts the turning of one draft may take
   */
  Bends(Score score, int effort) {
    this.score = score;
    this.effort = effort;
  }

  /** Whether a joint of a draft meets an arc too flat. */
  static boolean isFlat(Draft draft) {
    for (Laid l : draft.lines()) {
      for (boolean last : new boolean[] {false, true}) {
        if (Score.isFree(l) && arcMetFlat(draft, l, last).isPresent()) {
          return true;
        }
      }
    }
    return false;
  }

  /** The draft with its flat ends turned one after another, as far as that makes it better. */
  Draft bent(Draft draft) {
    Draft best = draft;
    int spent = 0;
    for (int k = 0; k < ENDS && !Score.isClean(best); k++) {
      Draft from = best;
      for (int i = 0; i < from.moves().size(); i++) {
        for (boolean last : new boolean[] {false, true}) {
          List<Move> ways = spent < effort ? ways(from, from.line(i), last) : List.of();
          spent += ways.size() * from.moves().size() * from.weight();
          for (Move m : ways) {
            Draft d = replaced(from, i, m);
            best = score.of(d) < score.of(best) - 1e-6 ? d : best;
          }
        }
      }
      if (best.equals(from)) {
        break;
      }
    }
    return best;
  }

  private static Draft replaced(Draft draft, int i, Move by) {
    List<Move> moves = new ArrayList<>(draft.moves());
    moves.set(i, by);
    Draft d = draft.recut(draft.base(), moves);
    return d.moves().size() == moves.size() ? d : draft;
  }

  /** The arc of the slab's edge that a straight joint meets under the least angle allowed. */
  private static Optional<Arc> arcMetFlat(Draft draft, Laid line, boolean last) {
    if (line.tag(last) < 0
        && line.path() instanceof Segment s
        && draft.ground().edge(line.tag(last)) instanceof Arc arc) {
      Point radius = arc.centre().minus(line.end(last)).unit();
      double off = Math.toDegrees(Math.asin(Math.min(1, Math.abs(radius.cross(s.direction(0))))));
      return 90 - off < Angles.ACUTE.value() ? Optional.of(arc) : Optional.empty();
    }
    return Optional.empty();
  }

  /** A straight cut turned at one of its last crossings towards the arc it meets too flat. */
  private static List<Move> ways(Draft draft, Laid line, boolean last) {
    Optional<Arc> arc = arcMetFlat(draft, line, last);
    if (arc.isEmpty() || !(line.move().carrier() instanceof Carrier.Line)) {
      return List.of();
    }
    Point onward = line.onward(last);
    List<Move> found = new ArrayList<>();
    List<Point> places = places(draft, line, last);
    for (Point node : places.subList(Math.max(0, places.size() - NODES), places.size())) {
      for (Point leg : legs(arc.get(), node, onward)) {
        Point first = last ? onward.times(-1) : leg;
        Point second = last ? leg : onward.times(-1);
        Bent bent = new Bent(node, first, second);
        found.add(new Move(bent, node, line.move().reach()));
      }
    }
    return found;
  }

  /** Where a line crosses others or is met by them, from its other end on. */
  private static List<Point> places(Draft draft, Laid line, boolean last) {
    Carrier carrier = Carrier.Line.through(line.end(!last), line.end(last));
    double whole = line.path().length();
    List<Double> met = new ArrayList<>();
    for (Laid other : draft.lines()) {
      for (Carrier.Crossing c : carrier.crossings(other.path())) {
        double at = c.place();
        boolean inside = at > SAME && at < whole - SAME;
        if (!other.equals(line) && inside && met.stream().allMatch(m -> Math.abs(m - at) > SAME)) {
          met.add(at);
        }
      }
    }
    return met.stream().sorted().map(carrier::at).toList();
  }

  /** The directions of a leg: along the arc's radius, or the line turned by some degrees. */
  private static List<Point> legs(Arc arc, Point node, Point onward) {
    List<Point> found = new ArrayList<>();
    Point out = node.minus(arc.centre());
    if (out.norm() > NEAR_CENTRE) {
      Point radius = out.unit();
      Point leg = radius.dot(onward) > 0 ? radius : radius.times(-1);
      if (leg.dot(onward) > MOST) {
        found.add(leg);
      }
    }
    for (double degrees : TURNS) {
      found.add(onward.turned(Math.toRadians(degrees)));
      found.add(onward.turned(-Math.toRadians(degrees)));
    }
    return found;
  }
}
