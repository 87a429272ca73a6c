package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.layout.piece.Bent;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Moves the places where cuts of a draft end or meet, and with each all cuts that meet there. */
final class Drags {
  private static final double SAME = 0.95;
  private static final double[] STEPS = {48, 24, 12, 6, 3, 1};

  /** An end farther than this share of the spacing from another is not brought to it. */
  private static final double JOIN = 0.45;

  /** A place at most this near to an end of an edge stands at its corner and stays, inches. */
  private static final double CORNER = 0.6;

  private final Draft draft;
  private final List<Move> moves;

  Drags(Draft draft) {
    this.draft = draft;
    this.moves = draft.moves();
  }

  /**
   * The places where the engine's own cuts end or bend, each once.
   *
   * @param at where
   * @param tag what it stands on; a hard one where one of the ends stands on one
   */
  record Place(Point at, int tag) {}

  List<Place> places() {
    List<Place> found = new ArrayList<>();
    for (Laid l : draft.lines()) {
      if (Score.isFree(l)) {
        add(found, new Place(l.end(false), l.tag(false)));
        add(found, new Place(l.end(true), l.tag(true)));
      }
    }
    return found;
  }

  private static void add(List<Place> found, Place place) {
    for (int i = 0; i < found.size(); i++) {
      if (found.get(i).at().distance(place.at()) < SAME) {
        if (place.tag() < 0 && found.get(i).tag() >= 0) {
          found.set(i, place);
        }
        return;
      }
    }
    found.add(place);
  }

  /** Where a place may go. */
  List<Point> targets(Place place, List<Place> others) {
    List<Point> found = new ArrayList<>();
    if (place.tag() < 0) {
      Edge edge = draft.ground().edge(place.tag());
      double along = edge.nearest(place.at()) * edge.length();
      if (along < CORNER || edge.length() - along < CORNER) {
        return found;
      }
      for (double step : STEPS) {
        List<Point> both = new ArrayList<>();
        for (double to : new double[] {along + step, along - step}) {
          if (to > 1 && to < edge.length() - 1) {
            both.add(edge.at(to / edge.length()));
          }
        }
        // Whichever way the edge runs, the same comes first.
        both.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
        found.addAll(both);
      }
      return found;
    }
    double far = JOIN * draft.ground().limits().spacing();
    for (Place p : others) {
      double d = p.at().distance(place.at());
      if (p.tag() >= 0 && d > SAME && d < far) {
        found.add(p.at());
      }
    }
    List<Point> ways = new ArrayList<>();
    for (Laid l : draft.lines()) {
      if (l.path().distance(place.at()) < SAME) {
        Point u = l.path().direction(l.path().nearest(place.at()));
        if (ways.stream().noneMatch(w -> Math.abs(w.cross(u)) < 0.02)) {
          ways.add(u);
        }
      }
    }
    for (double step : STEPS) {
      for (Point u : ways) {
        found.add(place.at().plus(u.times(step)));
        found.add(place.at().minus(u.times(step)));
      }
    }
    return found;
  }

  /** The cuts with all that meet at {@code from} brought to {@code to}. */
  List<Move> dragged(Point from, Point to) {
    List<Move> found = new ArrayList<>();
    for (int i = 0; i < moves.size(); i++) {
      found.add(dragged(moves.get(i), draft.line(i), i, from, to));
    }
    return found;
  }

  private Move dragged(Move move, Laid line, int i, Point from, Point to) {
    if (move.carrier() instanceof Bent b) {
      Laid next = draft.lines().get(draft.lines().indexOf(draft.line(i)) + 1);
      Point one = at(line.end(false), from) ? to : line.end(false);
      Point two = at(next.end(true), from) ? to : next.end(true);
      Point bend = at(b.bend(), from) ? to : b.bend();
      boolean touched = at(line.end(false), from) || at(next.end(true), from) || at(b.bend(), from);
      boolean apart = Math.min(one.distance(bend), two.distance(bend)) > 6;
      return touched && apart ? Move.bent(one, bend, two).reaching(move.reach()) : move;
    }
    if (!(move.carrier() instanceof Carrier.Line l)) {
      return move;
    }
    boolean first = at(line.end(false), from);
    boolean last = at(line.end(true), from);
    if (first || last) {
      Point other = line.end(!last);
      return other.distance(to) < 6 ? move : Move.between(other, to, move.reach());
    }
    if (line.path().distance(from) < SAME) {
      return move.on(new Carrier.Line(to, l.unit()));
    }
    return move;
  }

  private static boolean at(Point p, Point q) {
    return p.distance(q) < SAME;
  }
}
