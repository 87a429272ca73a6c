package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Piece;

/** Cuts what is left broken in a draft, piece by piece, each as cheaply as it can be. */
final class Mend {
  private static final int STEPS = 60;

  /** How many cuts one draft may take. */
  private static final int EFFORT = 6_000;

  private final Score score;
  private final boolean rare;
  private int effort;

  Mend(Score score, boolean rare) {
    this.score = score;
    this.rare = rare;
  }

  /** How many cuts the last draft took. */
  int spent() {
    return effort;
  }

  /** The draft with as few broken pieces as this way leaves. */
  Draft mend(Draft draft) {
    Draft d = draft;
    List<Piece> hopeless = new ArrayList<>();
    effort = 0;
    for (int step = 0; step < STEPS && !Score.isClean(d); step++) {
      Piece broken = null;
      for (Piece p : d.pieces()) {
        if (!p.faults().none() && !hopeless.contains(p)) {
          broken = p;
          break;
        }
      }
      if (broken == null) {
        return d;
      }
      Draft better = best(d, broken);
      if (better.equals(d)) {
        hopeless.add(broken);
      }
      d = better;
    }
    return d;
  }

  private Draft best(Draft draft, Piece piece) {
    Draft best = draft;
    double least = score.of(draft);
    for (Pattern p : Choices.next(draft, piece, rare, score::goOnOrStop)) {
      if (effort > EFFORT) {
        break;
      }
      effort += p.moves().size() * draft.weight();
      Draft child = draft.cutAll(p.moves());
      double value = score.of(child);
      if (value < least - 1e-6) {
        best = child;
        least = value;
      }
    }
    return best;
  }
}
