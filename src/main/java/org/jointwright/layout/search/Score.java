package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Measures;
import org.jointwright.layout.piece.Piece;
import org.jointwright.layout.piece.Tally;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * How drafts are compared.
 *
 * @param meetings where slabs laid before meet this one without filler between (S7)
 * @param sights what people see and joints like to meet
 * @param taste what the user would rather have than the fewest feet
 * @param goOn asked each time a draft is valued; once it says no, a {@link CancellationException}
 *     ends the search, so that nothing half-searched comes of it
 */
public record Score(List<Meeting> meetings, Sights sights, Taste taste, BooleanSupplier goOn) {
  /** What a broken panel weighs, ft: more than any joint saved by it. */
  private static final double BROKEN = 30;

  /** What any broken panel at all weighs: a clean draft is always better. */
  private static final double UNCLEAN = 1e5;

  private static final double EXCESS = 3000;

  /** What a missed joint of the neighbour weighs, ft; over the rules' 2, as a finisher sees it. */
  private static final double MISS = 6;

  /** What a joint a few degrees off weighs, ft: the finisher's eye. */
  private static final double SLANT = 6;

  /** What an open tee weighs that may still be closed, ft. */
  private static final double OPEN_TEE = 2;

  private static final double MEET = 0.9;

  /**
   * A neighbour.
   *
   * @param stretches the edges shared with it
   * @param ends where its joints end on them
   */
  public record Meeting(List<Edge> stretches, List<Point> ends) {
    /** Copies the lists. */
    public Meeting {
      stretches = List.copyOf(stretches);
      ends = List.copyOf(ends);
    }

    /** The ends of the slab that has fewer there, but not none, which meet none of the other's. */
    private int missed(List<Point> ours) {
      if (ours.isEmpty() || ends.isEmpty()) {
        return ends.size();
      }
      boolean oursFewer = ours.size() <= ends.size();
      List<Point> fewer = oursFewer ? ours : ends;
      List<Point> others = oursFewer ? ends : ours;
      int missed = 0;
      for (Point p : fewer) {
        if (others.stream().noneMatch(q -> q.distance(p) <= MEET)) {
          missed++;
        }
      }
      return missed;
    }
  }

  /** Where nothing is to be seen. */
  public Score(List<Meeting> meetings) {
    this(meetings, Sights.NONE);
  }

  /** By the rules' cost, without another taste. */
  public Score(List<Meeting> meetings, Sights sights) {
    this(meetings, sights, () -> true);
  }

  /** By the rules' cost, until told to stop. */
  public Score(List<Meeting> meetings, Sights sights, BooleanSupplier goOn) {
    this(meetings, sights, new Taste.Shortest(), goOn);
  }

  /** Copies the list. */
  public Score {
    meetings = List.copyOf(meetings);
  }

  /** The same with another taste. */
  public Score tasting(Taste other) {
    return new Score(meetings, sights, other, goOn);
  }

  /** Where neighbours' joints end on shared edges, and what joints like to meet besides. */
  public List<Point> targets() {
    return Stream.concat(
            meetings.stream().flatMap(m -> m.ends().stream()), sights.places().stream())
        .toList();
  }

  /** The value of a draft as it stands; less is better. */
  public double of(Draft draft) {
    goOnOrStop();
    Tally t = draft.tally();
    return t.cost() * (1 - sights.saving(draft))
        + SLANT * t.slants()
        + MISS * missed(draft)
        + (t.broken() == 0 ? 0 : UNCLEAN + BROKEN * t.broken())
        + EXCESS * t.excess()
        + taste.extra(draft);
  }

  /** Ends the search if it was told to stop. */
  void goOnOrStop() {
    if (!goOn.getAsBoolean()) {
      throw new CancellationException("the search was told to stop");
    }
  }

  /** Whether the draft may stay as it is. */
  public static boolean isClean(Draft draft) {
    return draft.tally().broken() == 0;
  }

  private int missed(Draft draft) {
    int missed = 0;
    for (Meeting m : meetings) {
      List<Point> ours = new ArrayList<>();
      for (Laid l : draft.lines()) {
        for (Point p : List.of(l.end(false), l.end(true))) {
          if (m.stretches().stream().anyMatch(s -> s.distance(p) < 0.5 && inside(s, p))) {
            ours.add(p);
          }
        }
      }
      missed += m.missed(ours);
    }
    return missed;
  }

  private static boolean inside(Edge s, Point p) {
    return s.start().distance(p) > 1 && s.end().distance(p) > 1;
  }

  /** The value of a draft with what its broken pieces will still need; less is more hopeful. */
  public double hopeful(Draft draft) {
    goOnOrStop();
    Tally t = draft.tally();
    double feet = t.length() + t.meets();
    for (Piece p : draft.pieces()) {
      if (!p.faults().none()) {
        feet += need(p);
      }
    }
    return feet + Math.min(0.2, 0.1 * t.excess());
  }

  /**
   * The same, open tees that a cut still to come may close counted less: for a search that joins
   * them.
   */
  public double mostHopeful(Draft draft) {
    double less = 0;
    for (Tally.Tee tee : draft.tally().tees()) {
      int beyond = draft.find(tee.at().plus(tee.onward().times(1)));
      if (beyond >= 0 && !draft.pieces().get(beyond).faults().none()) {
        less += Tally.TEE - OPEN_TEE;
      }
    }
    return hopeful(draft) - less;
  }

  /** The joints a broken piece will need at least, ft. */
  static double need(Piece piece) {
    Limits limits = piece.ground().limits();
    Measures m = piece.measures();
    Faults f = piece.faults();
    double spacing = limits.spacing() + Limits.SHADE;
    int along = (int) Math.ceil(m.longSide() / spacing);
    int across = (int) Math.ceil(m.shortSide() / spacing);
    double most = Math.min(f.aspectLimit(), 3);
    for (int guard = 0; guard < 50; guard++) {
      double l = m.longSide() / along;
      double s = m.shortSide() / across;
      if (l > s * (most + Limits.ASPECT_SHADE)) {
        along++;
      } else if (s > l * (most + Limits.ASPECT_SHADE)) {
        across++;
      } else {
        break;
      }
    }
    double fill = piece.area() / (m.longSide() * m.shortSide());
    double length = (along - 1) * m.shortSide() + (across - 1) * m.longSide();
    return length * fill / 12 + f.corners().size() + 0.5 * f.sharp().size() + 0.5;
  }

  /** Whether a joint is the engine's to move. */
  public static boolean isFree(Laid line) {
    return !line.locked() && line.kind() == JointKind.CONTRACTION;
  }
}
