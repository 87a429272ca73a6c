package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Chord;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.layout.piece.Tally;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jspecify.annotations.Nullable;

/**
 * Joints laid like the rungs of a ladder between two sides of a piece that need not be parallel,
 * from its foot, a side or the tip of a sharp corner, to its head. Each rung leaves both sides
 * squarely enough; each bay between two rungs is split into panels, fewer where the ladder is
 * narrow. Of all rungs at places a little apart those that cost least are taken, bay by bay, so
 * that every panel may stay.
 */
final class Ladder {
  /** Places on the sides: so many in the longest side of a panel. */
  private static final double PLACES = 6;

  /** A corner up to this wide may be a foot or a head: two angles of 60 degrees must be left. */
  private static final double TIP = 61;

  /** A side shorter than this is none: the noise of arithmetic, inches. */
  private static final double LEAST_SIDE = 1e-6;

  /** The cosine of the flattest angle of a rung with a side. */
  private static final double FLAT = Math.cos(Math.toRadians(59.2));

  /** A bay is at least this long on one of its sides, a share of the spacing. */
  private static final double SHORTEST = 0.45;

  private static final int MOST_PANELS = 6;

  /** Of more edges there would be too many pairs of ends. */
  private static final int MOST_EDGES = 12;

  /** So many rungs are gone on from of those equally far up. */
  private static final int KEPT = 12;

  /** Tags of what splits a bay: other numbers than those of rungs. */
  private static final int SOFT = 1_000_000;

  /** Joints come to so much more than those of the largest squares would. */
  private static final double LIKELY = 1.6;

  private static final double SEED = 0.47;

  private final Piece piece;
  private final End foot;
  private final End head;
  private final Flank right;
  private final Flank left;
  private final double spacing;
  private final double narrowest;

  /**
   * Where a ladder begins or ends.
   *
   * @param number of the edge, or of the edge that leaves the corner
   * @param corner whether it is a corner
   */
  private record End(int number, boolean corner) {
    /** The number of the edge that the flank ahead of it begins with. */
    int next() {
      return corner ? number : number + 1;
    }

    End on(int edges) {
      return new End(number + edges, corner);
    }
  }

  /**
   * A rung.
   *
   * @param path from the right side to the left; null at a tip
   */
  private record Rung(
      int number,
      int r,
      int l,
      Flank.Place right,
      Flank.Place left,
      @Nullable Edge path,
      int tag,
      double beyond) {
    double length() {
      return path == null ? 0 : path.length();
    }

    Point at(double share) {
      return path == null ? right.at() : path.at(share);
    }
  }

  /**
   * A way up to a rung.
   *
   * @param from the shares of the rung at which the joints of the bay before it end
   * @param to the shares at which those of the next bay begin
   * @param feet what the joints so far come to, tees too
   * @param likely what all may come to
   */
  private record Step(
      @Nullable Step before,
      Rung rung,
      List<Double> from,
      List<Double> to,
      double feet,
      double likely) {}

  /** A rung and how the bay beyond it is split: the cheapest way there is gone on from. */
  private record At(int rung, List<Double> to) {}

  private Ladder(Piece piece, End foot, End head) {
    Loop loop = piece.outer();
    Limits limits = piece.ground().limits();
    this.piece = piece;
    this.foot = foot;
    this.head = head;
    this.spacing = limits.spacing() + Limits.SHADE;
    this.narrowest = limits.narrowest();
    double step = limits.spacing() / PLACES;
    this.right = Flank.ahead(loop, foot.next(), head.number(), step);
    this.left = Flank.back(loop, head.next(), foot.number() + loop.size(), step);
  }

  /** The ladders between each two ends of a piece whose panels all may stay, the cheapest first. */
  static List<Pattern> of(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    if (!piece.holes().isEmpty() || piece.outer().size() > MOST_EDGES) {
      return found;
    }
    List<End> ends = new ArrayList<>();
    Loop loop = piece.outer();
    for (int i = 0; i < loop.size(); i++) {
      if (loop.angle(i) < TIP) {
        ends.add(new End(i, /* corner= */ true));
      }
      ends.add(new End(i, /* corner= */ false));
    }
    for (End foot : ends) {
      for (End other : ends) {
        // Up and down a ladder other rungs are hopeful first.
        End head = other.number() > foot.number() ? other : other.on(loop.size());
        if (head.number() > foot.next() && head.next() < foot.number() + loop.size()) {
          Ladder ladder = new Ladder(piece, foot, head);
          ladder.cheapest().ifPresent(s -> found.add(ladder.pattern(s)));
        }
      }
    }
    found.sort(Comparator.comparingDouble(Pattern::feet));
    return found;
  }

  private List<Rung> rungs() {
    List<Rung> found = new ArrayList<>();
    List<Flank.Place> rights = right.places();
    List<Flank.Place> lefts = left.places();
    for (int r = 0; r < rights.size(); r++) {
      for (int l = 0; l < lefts.size(); l++) {
        boolean first = r == 0 && l == 0;
        boolean last = r == rights.size() - 1 && l == lefts.size() - 1;
        boolean inside = r > 0 && l > 0 && r < rights.size() - 1 && l < lefts.size() - 1;
        Flank.Place a = rights.get(r);
        Flank.Place b = lefts.get(l);
        int number = found.size();
        if (first) {
          found.add(end(number, r, l, a, b, foot));
        } else if (last) {
          found.add(end(number, r, l, a, b, head));
        } else if (inside && stands(a, b)) {
          found.add(
              new Rung(number, r, l, a, b, new Segment(a.at(), b.at()), number, feetBeyond(a, b)));
        }
      }
    }
    return found;
  }

  private Rung end(int number, int r, int l, Flank.Place a, Flank.Place b, End end) {
    Loop loop = piece.outer();
    if (end.corner()) {
      return new Rung(number, r, l, a, b, null, 0, 0);
    }
    Edge e = loop.edge(end.number());
    Edge path = end.equals(foot) ? e.reversed() : e;
    return new Rung(number, r, l, a, b, path, loop.tag(end.number()), 0);
  }

  /** Whether a rung from place to place leaves both sides well and stays inside. */
  private boolean stands(Flank.Place a, Flank.Place b) {
    double length = a.at().distance(b.at());
    if (length < narrowest / 2 || length > MOST_PANELS * spacing) {
      return false;
    }
    Point u = b.at().minus(a.at()).unit();
    if (!right.isCorner(a) && Math.abs(right.direction(a).dot(u)) > FLAT) {
      return false;
    }
    if (!left.isCorner(b) && Math.abs(left.direction(b).dot(u)) > FLAT) {
      return false;
    }
    Optional<Chord> chord =
        Chord.across(piece, Carrier.Line.through(a.at(), b.at()), a.at().towards(b.at(), SEED));
    return chord.isPresent() && Math.abs(chord.get().path().length() - length) < 0.1;
  }

  /**
   * A ladder of panels that may stay, cheap though not always the very cheapest: of the rungs that
   * are equally far up, those that are likely to come to least are gone on from.
   */
  private Optional<Step> cheapest() {
    List<Rung> rungs = rungs();
    Map<Integer, List<Splits>> bySize = new HashMap<>();
    List<List<Step>> levels = new ArrayList<>();
    int top = right.places().size() + left.places().size() - 2;
    for (int i = 0; i <= top; i++) {
      levels.add(new ArrayList<>());
    }
    for (Splits s : Splits.upTo(MOST_PANELS)) {
      bySize.computeIfAbsent(s.before().size(), k -> new ArrayList<>()).add(s);
      if (fits(rungs.getFirst(), s.after())) {
        levels.getFirst().add(new Step(null, rungs.getFirst(), List.of(), s.after(), 0, 0));
      }
    }
    for (List<Step> level : levels) {
      level.sort(Comparator.comparingDouble(Step::likely));
      Set<At> seen = new HashSet<>();
      for (Step s : level) {
        At at = new At(s.rung().number(), s.to());
        if (seen.size() < KEPT && !seen.contains(at) && stays(s)) {
          seen.add(at);
          if (at.rung() == rungs.size() - 1) {
            return Optional.of(s);
          }
          for (Step next : next(s, rungs, bySize.getOrDefault(s.to().size(), List.of()))) {
            levels.get(next.rung().r() + next.rung().l()).add(next);
          }
        }
      }
    }
    return Optional.empty();
  }

  /** All that may follow a step, its panels not looked at yet. */
  private List<Step> next(Step s, List<Rung> rungs, List<Splits> splits) {
    List<Step> found = new ArrayList<>();
    for (Rung to : rungs.subList(s.rung().number() + 1, rungs.size())) {
      boolean last = to.number() == rungs.size() - 1;
      if (isBay(s.rung(), to)) {
        for (Splits next : splits) {
          if (fits(to, next.before()) && (last || fits(to, next.after()))) {
            found.add(step(s, to, next, last));
          }
        }
      }
    }
    return found;
  }

  private static Step step(Step s, Rung to, Splits next, boolean last) {
    double feet = s.feet() + (last ? 0 : to.length() / 12 + Tally.TEE * next.tees());
    for (int k = 0; k < s.to().size(); k++) {
      feet += s.rung().at(s.to().get(k)).distance(to.at(next.before().get(k))) / 12;
    }
    return new Step(
        s, to, next.before(), last ? List.of() : next.after(), feet, feet + to.beyond());
  }

  /** What the joints beyond a rung are likely to come to, ft. */
  private double feetBeyond(Flank.Place a, Flank.Place b) {
    List<Edge> edges = new ArrayList<>();
    right.addBetween(a, right.places().getLast(), /* back= */ false, edges, null);
    left.addBetween(b, left.places().getLast(), /* back= */ true, edges, null);
    Point o = a.at();
    double twice = 0;
    double round = 0;
    Point from = o;
    for (Edge e : edges) {
      twice += from.minus(o).cross(e.start().minus(o)) + e.start().minus(o).cross(e.end().minus(o));
      round += e.length();
      from = e.end();
    }
    return LIKELY * Math.max(0, twice / spacing - round / 2) / 12;
  }

  /** Whether a rung cut at these shares leaves no part too long or far too short. */
  private boolean fits(Rung rung, List<Double> shares) {
    if (rung.path() == null) {
      return shares.isEmpty();
    }
    double from = 0;
    for (int i = 0; i <= shares.size(); i++) {
      double to = i < shares.size() ? shares.get(i) : 1;
      double part = (to - from) * rung.length();
      if (part > spacing || (!shares.isEmpty() && part < narrowest / 2)) {
        return false;
      }
      from = to;
    }
    return true;
  }

  /** Whether two rungs may bound a bay, as far as their ends tell. */
  private boolean isBay(Rung from, Rung to) {
    double r = to.right().far() - from.right().far();
    double l = to.left().far() - from.left().far();
    double most = spacing * Limits.BOW;
    return r > 0 && l > 0 && r <= most && l <= most && Math.max(r, l) >= SHORTEST * spacing;
  }

  /** Whether every panel of a bay may stay. */
  private boolean stays(Step step) {
    Step before = step.before();
    if (before == null) {
      return true;
    }
    Rung from = before.rung();
    Rung to = step.rung();
    List<Double> starts = before.to();
    List<Double> ends = step.from();
    int n = starts.size();
    for (int k = 0; k <= n; k++) {
      double a = k == 0 ? 0 : starts.get(k - 1);
      double b = k == n ? 1 : starts.get(k);
      double c = k == 0 ? 0 : ends.get(k - 1);
      double d = k == n ? 1 : ends.get(k);
      List<Edge> edges = new ArrayList<>();
      List<Integer> tags = new ArrayList<>();
      if (k == 0) {
        right.addBetween(from.right(), to.right(), /* back= */ false, edges, tags);
      } else {
        edges.add(new Segment(from.at(a), to.at(c)));
        tags.add(SOFT + k);
      }
      add(to, c, d, /* back= */ false, edges, tags);
      if (k == n) {
        left.addBetween(from.left(), to.left(), /* back= */ true, edges, tags);
      } else {
        edges.add(new Segment(to.at(d), from.at(b)));
        tags.add(SOFT + k + 1);
      }
      add(from, a, b, /* back= */ true, edges, tags);
      // Rungs that touch leave a side of no length between them: that is no panel.
      if (edges.stream().anyMatch(e -> e.length() < LEAST_SIDE)) {
        return false;
      }
      Piece panel = new Piece(piece.ground(), new Loop(edges, tags), List.of());
      if (!panel.faults().none()) {
        return false;
      }
    }
    return true;
  }

  private static void add(
      Rung rung, double from, double to, boolean back, List<Edge> edges, List<Integer> tags) {
    if (rung.path() != null) {
      Edge part = rung.path().part(from, to);
      edges.add(back ? part.reversed() : part);
      tags.add(rung.tag());
    }
  }

  /** The cuts: the rungs from foot to head, then what splits the bays. */
  private Pattern pattern(Step last) {
    List<Move> rungs = new ArrayList<>();
    List<Move> between = new ArrayList<>();
    for (Step s = last; s.before() != null; s = s.before()) {
      Step before = s.before();
      for (int k = 0; k < s.from().size(); k++) {
        Point a = before.rung().at(before.to().get(k));
        Point b = s.rung().at(s.from().get(k));
        between.add(Move.between(a, b, Move.Reach.PIECE));
      }
      if (before.before() != null) {
        rungs.add(
            Move.between(before.rung().right().at(), before.rung().left().at(), Move.Reach.PIECE));
      }
    }
    rungs.addAll(between);
    return new Pattern(rungs, last.feet());
  }
}
