package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jointwright.plan.BoxOut;

/**
 * Chooses among the box-outs of a slab's objects by what layouts come of them: all alike first,
 * then one object at a time. Bounded by count, so not every combination is seen.
 *
 * @param choices for each object, the likeliest first, none empty
 * @param most how many layouts may be tried
 */
public record Choice(List<List<BoxOut>> choices, int most) {
  /** What a foot of filler weighs against a foot of joint: of two as good the smaller is made. */
  private static final double FILLER = 0.1;

  /**
   * The best set found.
   *
   * @param value how good the layouts with a set of box-outs are; less is better
   */
  public List<BoxOut> best(ToDoubleFunction<List<BoxOut>> value) {
    Trial trial = new Trial(value);
    List<BoxOut> best = alike(0);
    int longest = choices.stream().mapToInt(List::size).max().orElse(0);
    if (longest <= 1) {
      return best;
    }
    for (int k = 0; k < longest; k++) {
      best = trial.better(best, alike(k));
    }
    for (int i = 0; i < choices.size(); i++) {
      for (BoxOut other : choices.get(i)) {
        List<BoxOut> boxes = new ArrayList<>(best);
        boxes.set(i, other);
        best = trial.better(best, boxes);
      }
    }
    return best;
  }

  private List<BoxOut> alike(int k) {
    return choices.stream().map(c -> c.get(Math.min(k, c.size() - 1))).toList();
  }

  /** What was tried so far. */
  private final class Trial {
    private final ToDoubleFunction<List<BoxOut>> value;
    private final List<List<BoxOut>> seen = new ArrayList<>();
    private double least = Double.POSITIVE_INFINITY;

    Trial(ToDoubleFunction<List<BoxOut>> value) {
      this.value = value;
    }

    List<BoxOut> better(List<BoxOut> best, List<BoxOut> boxes) {
      if (seen.contains(boxes) || seen.size() >= most) {
        return best;
      }
      seen.add(boxes);
      double inches = 0;
      for (BoxOut b : boxes) {
        inches += b.outline().ring().perimeter();
      }
      double found = value.applyAsDouble(boxes) + FILLER * inches / 12;
      if (found >= least - 1e-6) {
        return best;
      }
      least = found;
      return boxes;
    }
  }
}
