package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Point;

/**
 * Keeps the most hopeful drafts and cuts one broken piece of each in every way it knows. Every
 * finished draft is kept whatever its rank: half-finished ones look cheaper than they will be.
 */
public final class Beam {
  private static final int MORE = 4;
  private static final int DEPTH = 24;

  /** What is hoped for is seldom more than this much too dear. */
  private static final double HOPE = 0.95;

  private final Score score;
  private final Effort effort;
  private final boolean rare;
  private final List<Point> hints;

  /** The least share of its length that a draft may come to cost. */
  private final double hope;

  private final List<Draft> finished = new ArrayList<>();
  private final List<Draft> stuck = new ArrayList<>();
  private double best = Double.POSITIVE_INFINITY;
  private int spent;

  /**
   * A search.
   *
   * @param score how drafts are compared
   * @param rare whether moves that seldom pay are tried too
   */
  Beam(Score score, Effort effort, boolean rare) {
    this(score, effort, rare, score.targets());
  }

  /** A search that likes lines to pass those places at first. */
  Beam(Score score, Effort effort, boolean rare, List<Point> hints) {
    this.score = score;
    this.effort = effort;
    this.rare = rare;
    this.hints = List.copyOf(hints);
    this.hope = score.sights().hope();
  }

  /** The finished drafts that come of {@code start}, the best first. */
  public List<Draft> search(Draft start) {
    List<Draft> beam = List.of(start);
    if (Score.isClean(start)) {
      finish(start);
    }
    for (int depth = 0; depth < DEPTH && !beam.isEmpty() && spent < effort.cuts(); depth++) {
      List<Draft> next = new ArrayList<>();
      for (Draft d : beam) {
        next.addAll(children(d, depth == 0));
      }
      beam = depth == 0 ? next : widest(next);
    }
    finished.sort(Comparator.comparingDouble(score::of));
    return finished;
  }

  /** The least broken drafts met, cheaper than the best finished one. */
  public List<Draft> nearMisses() {
    return stuck;
  }

  private double hopeful(Draft d) {
    return rare ? score.mostHopeful(d) : score.hopeful(d);
  }

  private List<Draft> widest(List<Draft> drafts) {
    Set<Long> seen = new HashSet<>();
    List<Draft> kept = new ArrayList<>();
    List<Hope> hopes = hopes(drafts);
    hopes.removeIf(h -> HOPE * h.feet() >= best);
    hopes.sort(Comparator.comparingDouble(Hope::feet));
    keep(hopes, effort.width(), seen, kept);
    // And some that are nearly whole, though dearer so far.
    hopes.sort(Comparator.comparingDouble(h -> h.feet() * (1 + h.draft().tally().excess())));
    keep(hopes, effort.width() + MORE, seen, kept);
    // Those nearest their end first: what they come to bounds the others.
    kept.sort(Comparator.comparingDouble(d -> d.tally().excess()));
    return kept;
  }

  /** A draft with how hopeful it is, worked out once though compared often. */
  private record Hope(Draft draft, double feet) {}

  private List<Hope> hopes(List<Draft> drafts) {
    List<Hope> hopes = new ArrayList<>();
    for (Draft d : drafts) {
      hopes.add(new Hope(d, hopeful(d)));
    }
    return hopes;
  }

  private List<Hope> mostHopefulFirst(List<Draft> drafts) {
    List<Hope> hopes = hopes(drafts);
    hopes.sort(Comparator.comparingDouble(Hope::feet));
    return hopes;
  }

  private static void keep(List<Hope> hopes, int most, Set<Long> seen, List<Draft> kept) {
    for (Hope h : hopes) {
      if (kept.size() >= most) {
        return;
      }
      if (seen.add(Math.round(h.feet() * 1e4))) {
        kept.add(h.draft());
      }
    }
  }

  private void finish(Draft d) {
    finished.add(d);
    best = Math.min(best, score.of(d));
  }

  private List<Draft> children(Draft d, boolean root) {
    int k = pick(d);
    if (k < 0) {
      return List.of();
    }
    Piece piece = d.pieces().get(k);
    List<Draft> open = new ArrayList<>();
    List<Draft> begun = new ArrayList<>();
    double enough = Double.POSITIVE_INFINITY;
    Runnable ask = score::goOnOrStop;
    for (Pattern pattern :
        root ? Choices.first(d, hints, rare, ask) : Choices.next(d, piece, rare, ask)) {
      score.goOnOrStop();
      if (spent > effort.cuts()) {
        break;
      }
      if (hope * (d.tally().length() + pattern.feet()) >= best || pattern.feet() > enough) {
        continue;
      }
      spent += pattern.moves().size() * d.weight();
      Draft child = d.cutAll(pattern.moves());
      // What many pieces came of took longer to make.
      spent += child.pieces().size() / 10;
      if (child == d) {
        continue;
      }
      if (child.tally().broken() < d.tally().broken() && !pattern.isSingle()) {
        enough = Math.min(enough, score.taste().ample() * pattern.feet());
      }
      if (Score.isClean(child)) {
        finish(child);
      } else {
        (root && pattern.isSingle() ? begun : open).add(child);
      }
    }
    if (open.isEmpty() && begun.isEmpty()) {
      note(d);
    }
    open.forEach(this::note);
    // Whole patterns and single first cuts are not measured against each other.
    List<Draft> kept = new ArrayList<>();
    keep(mostHopefulFirst(open), root ? effort.width() : effort.children(), new HashSet<>(), kept);
    keep(mostHopefulFirst(begun), kept.size() + effort.width(), new HashSet<>(), kept);
    return kept;
  }

  private void note(Draft d) {
    if (d.tally().cost() >= best) {
      return;
    }
    double value = score.of(d);
    int at = 0;
    while (at < stuck.size() && score.of(stuck.get(at)) < value - 1e-6) {
      at++;
    }
    boolean same = at < stuck.size() && score.of(stuck.get(at)) < value + 1e-6;
    if (at < effort.width() && !same) {
      stuck.add(at, d);
      if (stuck.size() > effort.width()) {
        stuck.removeLast();
      }
    }
  }

  /** The piece to cut next: one with a hole or inside corners first, then the largest. */
  private static int pick(Draft d) {
    int best = -1;
    double most = 0;
    for (int i = 0; i < d.pieces().size(); i++) {
      Piece p = d.pieces().get(i);
      Faults f = p.faults();
      if (!f.none()) {
        double weight = p.area() * (1 + 10 * f.corners().size() + 100 * p.holes().size());
        if (weight > most) {
          most = weight;
          best = i;
        }
      }
    }
    return best;
  }
}
