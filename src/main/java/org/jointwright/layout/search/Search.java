package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.layout.piece.Tally;
import org.jointwright.shape.Point;

/** The whole search for one slab. */
public final class Search {
  /** What is this much dearer than the best is not climbed from. */
  private static final double WORTH = 1.3;

  private static final double IDEAL = 1.005;

  /** Cuts that were made at most so many apart are taken out together. */
  private static final int NEIGHBOURS = 4;

  /** How many drafts with turned ends are climbed from. */
  private static final int BENT = 1;

  /** How many cuts the turning of one draft's ends may take. */
  private static final int BENDING = 2_000;

  /** What a climb must leave of the excess to be worth its bent joints. */
  private static final double CLEARLY = 0.9;

  /** What odd joints must leave of it where straight ones would do. */
  private static final double FAR = 0.5;

  /** The sine of a degree: what is less off runs straight. */
  private static final double STRAIGHT = Math.sin(Math.toRadians(1));

  /** What is filled anew is climbed from when it is not this much dearer. */
  private static final double NEARLY = 1.1;

  /** So many ways of leaving a joint out are tried, the least broken first. */
  private static final int SPARED = 3;

  /** So many ways of setting lines square are climbed from. */
  private static final int SQUARED = 4;

  /** What setting lines square must save in a round to be gone on with, ft. */
  private static final double SAVED = 1;

  /** What one chalk line instead of two is worth, ft. */
  private static final double LINED_UP = 1;

  /** How often a slab is shaken at most. */
  private static final int SHAKES = 6;

  private final Draft start;
  private final Score score;
  private final Effort effort;
  private final Map<List<Move>, Climbed> climbs = new HashMap<>();
  private Draft best;

  /**
   * What a climb came to.
   *
   * @param spent how many cuts were made
   */
  private record Climbed(Draft best, int spent) {}

  private Search(Draft start, Score score, Effort effort) {
    this.start = start;
    this.score = score;
    this.effort = effort;
    this.best = start;
  }

  /** A draft that comes of {@code start} quickly, to tell how hopeful it is. */
  public static Draft quick(Draft start, Score score) {
    if (Broad.isBroad(start)) {
      Draft broad = Broad.best(start, score);
      if (Score.isClean(broad)) {
        return broad;
      }
    }
    Beam beam = new Beam(score, Effort.FIRST, /* rare= */ false);
    List<Draft> finished = beam.search(start);
    if (!finished.isEmpty()) {
      return finished.getFirst();
    }
    return beam.nearMisses().isEmpty() ? start : beam.nearMisses().getFirst();
  }

  /**
   * The best draft that comes of {@code start}.
   *
   * @param metric whether marks stand at whole 10 mm rather than whole inches
   * @param effort how far to go
   */
  public static Draft best(Draft start, Score score, boolean metric, Effort effort) {
    Search search = new Search(start, score, effort);
    search.run();
    search.lineUp();
    if (Broad.isWorthIt(start) && !Broad.isBroad(start) && !search.isIdeal()) {
      search.take(Broad.best(start, score));
    }
    return new Tidy(start, score, metric).tidy(search.best);
  }

  /** The least joints that the pieces of a draft still need, ft. */
  public static double need(Draft draft) {
    return draft.pieces().stream().mapToDouble(Score::need).sum();
  }

  private void run() {
    if (Broad.isBroad(start)) {
      take(Broad.best(start, score));
      if (Score.isClean(best)) {
        return;
      }
    }
    List<Draft> from = promising(/* rare= */ false);
    if (isIdeal()) {
      return;
    }
    climbAll(from);
    if (effort.thorough() && (!isCurved() || !Score.isClean(best))) {
      List<Draft> more = promising(/* rare= */ true);
      climbAll(more);
      from.addAll(more);
    }
    if (!Score.isClean(best) && !isCurved()) {
      begin();
    }
    if (Score.isClean(best) && !isCurved()) {
      Draft before = spare();
      remake();
      if (!best.equals(before)) {
        spare();
      }
    } else if (!Score.isClean(best)) {
      remake();
      shake();
      leastBroken(from);
    }
    if (effort.thorough() && Score.isClean(best)) {
      square();
    }
  }

  /** Sets lines square and through tees as long as that pays, and climbs from what comes of it. */
  private void square() {
    boolean better = true;
    while (better
        && (!best.slanted().isEmpty() || (isCurved() && !best.tally().tees().isEmpty()))) {
      double before = score.of(best);
      List<Draft> found = new ArrayList<>(Squaring.of(start, best));
      for (Piece p : start.pieces()) {
        Beginnings.pinwheels(p).forEach(w -> found.add(start.cutAll(w.moves())));
      }
      found.sort(Comparator.comparingDouble(score::of));
      for (Draft d : found.subList(0, Math.min(SQUARED, found.size()))) {
        Draft climbed = climbed(d).best();
        take(climbed);
        if (!Score.isClean(climbed)) {
          take(climbed(new Mend(score, /* rare= */ false).mend(d)).best());
        }
      }
      better = score.of(best) < before - SAVED;
    }
  }

  /**
   * A line that ends on a box-out goes on from its other side, where that costs next to nothing.
   */
  private void lineUp() {
    if (Score.isClean(best)) {
      double most = score.of(best) + LINED_UP;
      Squaring.across(start, best).stream()
          .filter(d -> Score.isClean(d) && score.of(d) <= most)
          .min(Comparator.comparingDouble(score::of))
          .ifPresent(d -> best = d);
    }
  }

  /** Whether arcs bound the slab: what is rare is for corners, and arcs take long to cut. */
  private boolean isCurved() {
    return start.ground().loops().stream()
        .flatMap(l -> l.edges().stream())
        .anyMatch(e -> e.turn() != 0);
  }

  /**
   * Where nothing meets every rule, a climb only bends joints for pennies of it: what it started
   * from is taken unless a climb leaves clearly less broken, and joints that run with the slab
   * unless odd ones leave far less.
   */
  private void leastBroken(List<Draft> from) {
    Draft plain = start;
    for (Draft d : from) {
      if (score.of(d) < score.of(plain)) {
        plain = d;
      }
    }
    if (best.tally().excess() > CLEARLY * plain.tally().excess()) {
      best = plain;
    }
    if (isCurved() || crooked(best) == 0) {
      return;
    }
    List<Draft> straight = new ArrayList<>(from);
    straight.removeIf(d -> crooked(d) >= crooked(best));
    straight.sort(Comparator.comparingDouble(score::of));
    Draft square = start;
    for (Draft d : straight.subList(0, Math.min(effort.climbs(), straight.size()))) {
      Draft climbed = Climb.straight(start, score, effort).climb(d);
      square = score.of(climbed) < score.of(square) ? climbed : square;
    }
    if (best.tally().excess() > FAR * square.tally().excess()) {
      best = square;
    }
  }

  /** How many lines run neither along nor square to one of the slab's main directions. */
  private static int crooked(Draft draft) {
    int count = 0;
    for (Laid l : draft.lines()) {
      Point u = l.end(true).minus(l.end(false)).unit();
      boolean runs =
          draft.ground().axes().stream()
              .anyMatch(a -> Math.min(Math.abs(a.cross(u)), Math.abs(a.dot(u))) < STRAIGHT);
      count += l.locked() || runs ? 0 : 1;
    }
    return count;
  }

  /**
   * Whether nothing but pennies could be saved: even panels, no tee, no more length than needed.
   */
  private boolean isIdeal() {
    Tally t = best.tally();
    return Score.isClean(best)
        && score.sights().isAllMet(best)
        && t.slants() == 0
        && score.of(best) - start.tally().length() <= IDEAL * need(start);
  }

  /** What is worth climbing from: the beam's best and what it nearly finished, as is and mended. */
  private List<Draft> promising(boolean rare) {
    Beam beam = new Beam(score, rare ? effort.rare() : effort, rare);
    List<Draft> finished = beam.search(start);
    if (!finished.isEmpty()) {
      take(finished.getFirst());
    }
    List<Draft> from = new ArrayList<>();
    for (Draft d : finished.subList(0, Math.min(effort.climbs(), finished.size()))) {
      if (score.of(d) <= WORTH * score.of(best)) {
        from.add(d);
      }
    }
    double bound = Score.isClean(best) ? score.of(best) : Double.POSITIVE_INFINITY;
    List<Draft> near = beam.nearMisses().stream().filter(d -> d.tally().cost() < bound).toList();
    // A climb may mend what was nearly right without another joint.
    from.addAll(near.subList(0, Math.min(effort.climbs(), near.size())));
    if (isCurved()) {
      from.addAll(bent(near));
    }
    near.stream()
        .map(new Mend(score, rare)::mend)
        .sorted(Comparator.comparingDouble(score::of))
        .limit(effort.climbs())
        .forEach(from::add);
    return from;
  }

  /** The best of what comes of turning ends that meet arcs too flat. */
  private List<Draft> bent(List<Draft> near) {
    // Where nothing is whole yet, all that may make it so is worth trying.
    int worth = Score.isClean(best) ? 1 : 4;
    Bends bends = new Bends(score, worth * BENDING);
    List<Draft> found = new ArrayList<>();
    for (Draft d : near.stream().filter(Bends::isFlat).limit(effort.climbs()).toList()) {
      Draft turned = bends.bent(d);
      if (!turned.equals(d)) {
        found.add(turned);
      }
    }
    found.sort(Comparator.comparingDouble(score::of));
    return found.subList(0, Math.min(worth * BENT, found.size()));
  }

  private void climbAll(List<Draft> from) {
    for (Draft d : from) {
      take(climbed(d).best());
    }
  }

  /** What a climb from a draft of the same cuts came to, each climbed from once. */
  private Climbed climbed(Draft from) {
    Climbed known = climbs.get(from.moves());
    if (known == null) {
      Climb climb = new Climb(start, score, effort);
      known = new Climbed(climb.climb(from), climb.spent());
      climbs.put(from.moves(), known);
    }
    return known;
  }

  private boolean take(Draft d) {
    boolean better = score.of(d) < score.of(best) - 1e-6;
    if (better) {
      best = d;
    }
    return better;
  }

  /**
   * Where sides slant and all else failed: shakes the best draft until something sound falls out.
   */
  private void shake() {
    boolean slants = start.ground().axes().size() > 1 && !isCurved();
    for (int seed = 1;
        seed <= SHAKES && !Score.isClean(best) && effort.thorough() && slants;
        seed++) {
      Draft shaken = new Shaken(start, score, seed).shake(start);
      if (Score.isClean(shaken)) {
        take(climbed(shaken).best());
        spare();
      }
    }
  }

  /** Begins in ways that seldom pay and fills what they leave, each piece as cheaply as it can. */
  private void begin() {
    Mend mend = new Mend(score, /* rare= */ false);
    List<Draft> found = new ArrayList<>();
    int left = effort.cuts() + effort.remade();
    List<Draft> begun = Beginnings.of(start);
    // What leaves least to be done comes first: not all may be filled.
    begun.sort(Comparator.comparingDouble(d -> d.tally().excess()));
    boolean whole = false;
    for (Draft d : begun) {
      // Beside a beginning that is whole already, one that is not seldom comes to less.
      if (left > 0 && (!whole || Score.isClean(d))) {
        whole |= Score.isClean(d);
        found.add(mend.mend(d));
        left -= mend.spent();
      }
    }
    found.sort(Comparator.comparingDouble(score::of));
    climbAll(found.subList(0, Math.min(effort.climbs(), found.size())));
  }

  /**
   * Leaves out a joint of the best draft and lets the others move until the panels fit: what one
   * panel fewer can do no joint can be added to find.
   */
  private Draft spare() {
    boolean better = effort.thorough();
    while (better) {
      better = false;
      List<Draft> fewer = new ArrayList<>();
      for (int i = 0; i < best.moves().size(); i++) {
        List<Move> moves = new ArrayList<>(best.moves());
        moves.remove(i);
        // On a large slab to cut all but one joint anew takes long, and there are hundreds of them.
        score.goOnOrStop();
        fewer.add(best.recut(start, moves));
      }
      fewer.sort(Comparator.comparingDouble(score::of));
      for (Draft d : fewer.subList(0, Math.min(SPARED, fewer.size()))) {
        better |= take(climbed(d).best());
      }
    }
    return best;
  }

  /** Takes out cuts of the best draft, one or two at a time, and fills what opens in other ways. */
  private void remake() {
    int left = effort.remade();
    int i = 0;
    int k = 0;
    Draft from = best;
    while (left > 0 && i < from.moves().size()) {
      List<Move> moves = new ArrayList<>(from.moves());
      moves.remove(k);
      if (k > i) {
        moves.remove(i);
      }
      Mend mend = new Mend(score, /* rare= */ true);
      Draft filled = mend.mend(from.recut(start, moves));
      left -= mend.spent() + moves.size();
      if (score.of(filled) < NEARLY * score.of(best) && score.of(filled) != score.of(best)) {
        Climbed climbed = climbed(filled);
        take(climbed.best());
        left -= climbed.spent();
      }
      k++;
      if (k >= from.moves().size() || k > i + NEIGHBOURS) {
        i++;
        k = i;
      }
      if (!from.equals(best)) {
        // What was found is taken apart in its turn.
        from = best;
        i = 0;
        k = 0;
      }
    }
  }
}
