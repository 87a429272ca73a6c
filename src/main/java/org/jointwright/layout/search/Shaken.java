package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.layout.piece.Tally;
import org.jointwright.shape.Point;

/**
 * The last resort on a slab with slanted sides of which nothing sound was found: its cuts are
 * shaken, much at first and less and less, and what is worse is kept now and then, so that a draft
 * gets out of what every small step leaves. Seeded and counted: the same slab is shaken the same.
 */
final class Shaken {
  private static final int STEPS = 6_000;

  /** How much worse a draft may get with a fair chance at first, and in the end, ft. */
  private static final double HOT = 8;

  private static final double COLD = 0.5;

  /** What a broken panel weighs at first and in the end, ft: broken drafts lead to sound ones. */
  private static final double BROKEN = 6;

  private static final double BROKEN_AT_LAST = 30;

  /** The same of the excess. */
  private static final double EXCESS = 600;

  private static final double EXCESS_AT_LAST = 3_000;

  /** What a joint a few degrees off weighs, ft. */
  private static final double SLANT = 6;

  /** How far cuts are shifted and places aside at first, inches, and cuts turned, degrees. */
  private static final double SHIFT = 24;

  private static final double ASIDE = 12;
  private static final double TURN = 10;

  private final Draft base;
  private final Score score;
  private final Random random;

  /** How hot it is, from 1 down to 0. */
  private double heat = 1;

  Shaken(Draft base, Score score, long seed) {
    this.base = base;
    this.score = score;
    this.random = new Random(seed);
  }

  /** The best draft met; {@code from} where none was better. */
  Draft shake(Draft from) {
    Draft draft = from;
    Draft best = from;
    for (int i = 0; i < STEPS; i++) {
      heat = 1 - (double) i / STEPS;
      double allowed = HOT * Math.pow(COLD / HOT, 1 - heat);
      Draft tried = tried(draft);
      double worse = value(tried) - value(draft);
      if (worse < 0 || random.nextDouble() < Math.exp(-worse / allowed)) {
        draft = tried;
        best = score.of(draft) < score.of(best) ? draft : best;
      }
    }
    return best;
  }

  private double value(Draft d) {
    Tally t = d.tally();
    return t.cost()
        + SLANT * t.slants()
        + (BROKEN_AT_LAST + heat * (BROKEN - BROKEN_AT_LAST)) * t.broken()
        + (EXCESS_AT_LAST + heat * (EXCESS - EXCESS_AT_LAST)) * t.excess();
  }

  private Draft tried(Draft d) {
    double what = random.nextDouble();
    if (d.moves().isEmpty() || what < 0.15) {
      return added(d);
    }
    if (what < 0.25) {
      Draft less = d.recut(base, without(d.moves(), random.nextInt(d.moves().size())));
      return random.nextBoolean() ? added(less) : less;
    }
    if (what < 0.32) {
      return reordered(d);
    }
    return what < 0.75 ? dragged(d) : moved(d);
  }

  private static List<Move> without(List<Move> moves, int i) {
    List<Move> less = new ArrayList<>(moves);
    less.remove(i);
    return less;
  }

  private Draft added(Draft d) {
    List<Piece> broken = d.pieces().stream().filter(p -> !p.faults().none()).toList();
    if (broken.isEmpty()) {
      return d;
    }
    Piece piece = broken.get(random.nextInt(broken.size()));
    List<Pattern> patterns = Choices.next(d, piece, /* rare= */ true, score::goOnOrStop);
    return patterns.isEmpty() ? d : d.cutAll(patterns.get(random.nextInt(patterns.size())).moves());
  }

  private Draft reordered(Draft d) {
    int i = random.nextInt(d.moves().size());
    List<Move> moves = without(d.moves(), i);
    moves.add(random.nextInt(moves.size() + 1), d.moves().get(i));
    return d.recut(base, moves);
  }

  private Draft dragged(Draft d) {
    Drags drags = new Drags(d);
    List<Drags.Place> places = drags.places();
    if (places.isEmpty()) {
      return d;
    }
    Drags.Place place = places.get(random.nextInt(places.size()));
    List<Point> targets = drags.targets(place, places);
    if (targets.isEmpty()) {
      return d;
    }
    Point to = targets.get(random.nextInt(targets.size()));
    if (place.tag() >= 0 && random.nextBoolean()) {
      to = to.plus(new Point(random.nextGaussian(), random.nextGaussian()).times(ASIDE * heat));
    }
    List<Move> moves = drags.dragged(place.at(), to);
    Draft tried = d.recut(base, moves);
    return tried.moves().size() == moves.size() ? tried : d;
  }

  private Draft moved(Draft d) {
    int i = random.nextInt(d.moves().size());
    Move move = d.moves().get(i);
    Carrier carrier = move.carrier();
    List<Move> moves = new ArrayList<>(d.moves());
    if (carrier instanceof Carrier.Line line && random.nextBoolean()) {
      Laid laid = d.line(i);
      Point u = line.unit().turned(Math.toRadians(TURN * heat * random.nextGaussian()));
      Carrier turned = new Carrier.Line(laid.path().at(random.nextInt(3) / 2.0), u);
      Point seed = turned.at(turned.place(laid.path().at(0.5)));
      moves.set(i, new Move(turned, seed, move.reach()));
    } else {
      moves.set(i, move.on(carrier.shifted(SHIFT * heat * random.nextGaussian())));
    }
    return d.recut(base, moves);
  }
}
