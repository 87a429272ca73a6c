package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.shape.Point;

/**
 * Betters a draft by shifting, turning and dropping its cuts one at a time, made anew in order each
 * time, and keeping what is cheaper.
 */
final class Climb {
  private static final int ROUNDS = 4;

  private static final double[] SHIFTS = {24, -24, 12, -12, 6, -6, 3, -3, 1, -1};
  private static final double[] TURNS = {8, -8, 4, -4, 2, -2, 1, -1};

  private final Draft base;
  private final Score score;
  private final Effort effort;
  private final boolean turns;
  private final Map<Integer, Settled> shifted = new HashMap<>();
  private final Map<Integer, Settled> dragged = new HashMap<>();
  private int spent;

  Climb(Draft base, Score score, Effort effort) {
    this(base, score, effort, /* turns= */ true);
  }

  private Climb(Draft base, Score score, Effort effort, boolean turns) {
    this.base = base;
    this.score = score;
    this.effort = effort;
    this.turns = turns;
  }

  /** A climb that shifts and drops cuts but turns none. */
  static Climb straight(Draft base, Score score, Effort effort) {
    return new Climb(base, score, effort, /* turns= */ false);
  }

  /** A cut or place of a draft for which nothing better was found, and how many cuts that took. */
  private record Settled(Draft draft, int cuts) {}

  /**
   * Whether nothing better was found for this cut or place of the very same draft in a round
   * before; counted as if it were tried again.
   */
  private boolean again(Map<Integer, Settled> settled, int i, Draft draft) {
    Settled s = settled.get(i);
    if (s == null || s.draft() != draft) {
      return false;
    }
    spent += s.cuts();
    return true;
  }

  private void settle(Map<Integer, Settled> settled, int i, Draft from, Draft best, int made) {
    if (best == from) {
      settled.put(i, new Settled(from, spent - made));
    }
  }

  /** How many cuts were made. */
  int spent() {
    return spent;
  }

  /** The best draft reached from {@code start}. */
  Draft climb(Draft start) {
    Draft best = start;
    for (int round = 0; round < ROUNDS; round++) {
      double before = score.of(best);
      for (int i = 0; i < best.moves().size() && spent < effort.climbed(); i++) {
        if (!again(shifted, i, best)) {
          Draft from = best;
          int made = spent;
          best = better(best, i);
          settle(shifted, i, from, best, made);
        }
      }
      if (effort.thorough() && turns) {
        best = dragged(best);
      }
      if (score.of(best) > before - 1e-6) {
        break;
      }
    }
    return best;
  }

  /** The draft with its places brought, one after another, to where they are cheapest. */
  private Draft dragged(Draft draft) {
    Draft best = draft;
    for (int k = 0; ; k++) {
      Drags drags = new Drags(best);
      List<Drags.Place> places = drags.places();
      if (k >= places.size() || spent >= effort.climbed()) {
        return best;
      }
      Draft from = best;
      if (again(dragged, k, from)) {
        continue;
      }
      int made = spent;
      for (Point to : drags.targets(places.get(k), places)) {
        List<Move> moves = drags.dragged(places.get(k).at(), to);
        spent += moves.size() * from.weight();
        Draft d = from.recut(base, moves);
        if (d.moves().size() == moves.size() && score.of(d) < score.of(best) - 1e-6) {
          best = d;
        }
      }
      settle(dragged, k, from, best, made);
    }
  }

  /** The best draft with another cut in the place of cut {@code i}, or the same draft. */
  private Draft better(Draft draft, int i) {
    List<Move> moves = draft.moves();
    Draft prefix = draft.recut(base, moves.subList(0, i));
    List<Move> suffix = moves.subList(i + 1, moves.size());
    Laid line = draft.line(i);
    Draft best = draft;
    double least = score.of(draft);
    for (List<Move> tried : variations(draft, line)) {
      spent += (1 + suffix.size()) * draft.weight();
      Draft d = prefix;
      boolean whole = true;
      for (Move m : tried) {
        Optional<Draft> cut = d.cut(m);
        whole &= cut.isPresent();
        d = cut.orElse(d);
      }
      if (!whole) {
        continue;
      }
      d = d.cutAll(suffix);
      double value = score.of(d);
      if (value < least - 1e-6) {
        best = d;
        least = value;
      }
    }
    return best;
  }

  private List<List<Move>> variations(Draft draft, Laid line) {
    List<List<Move>> found = new ArrayList<>();
    Move move = line.move();
    found.add(List.of());
    Move.Reach other = move.reach() == Move.Reach.PIECE ? Move.Reach.THROUGH : Move.Reach.PIECE;
    found.add(List.of(move.reaching(other)));
    for (Point p : score.sights().near(line.path())) {
      double side = p.minus(line.path().at(line.path().nearest(p))).norm();
      for (double shift : new double[] {side, -side}) {
        found.add(List.of(move.on(move.carrier().shifted(shift))));
      }
    }
    for (double shift : SHIFTS) {
      found.add(List.of(move.on(move.carrier().shifted(shift))));
    }
    if (move.carrier() instanceof Carrier.Line l) {
      Point middle = line.path().at(0.5);
      for (Point pivot : List.of(middle, line.path().start(), line.path().end())) {
        for (double turn : turns ? TURNS : new double[0]) {
          Carrier turned = new Carrier.Line(pivot, l.unit().turned(Math.toRadians(turn)));
          Point seed = turned.at(turned.place(middle));
          found.add(List.of(new Move(turned, seed, move.reach())));
        }
      }
      for (Point axis : draft.ground().axes()) {
        for (Point u : List.of(axis, axis.left())) {
          if (Math.abs(u.cross(l.unit())) < 0.5) {
            found.add(List.of(new Move(new Carrier.Line(middle, u), middle, move.reach())));
          }
        }
      }
    }
    return found;
  }
}
