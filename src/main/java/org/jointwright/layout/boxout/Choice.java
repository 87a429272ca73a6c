package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jointwright.plan.BoxOut;
import org.jointwright.shape.Ring;

/**
 * Chooses among the box-outs of a slab's objects by what layouts come of them: all alike first,
 * then one object at a time. Bounded by count, so not every combination is seen.
 *
 * @param choices for each object, the likeliest first, none empty
 * @param most how many layouts may be tried
 */
public record Choice(List<List<Around>> choices, int most) {
  /** What a foot of filler weighs against a foot of joint: of two as good the smaller is made. */
  private static final double FILLER = 0.1;

  /**
   * The best set found.
   *
   * @param value how good the layouts with a set of box-outs are; less is better
   */
  public List<BoxOut> best(ToDoubleFunction<List<BoxOut>> value) {
    Trial trial = new Trial(value);
    List<Around> best = alike(0);
    int longest = choices.stream().mapToInt(List::size).max().orElse(0);
    if (longest <= 1) {
      return boxes(best);
    }
    for (int k = 0; k < longest; k++) {
      best = trial.better(best, alike(k));
    }
    for (int i = 0; i < choices.size(); i++) {
      for (Around other : choices.get(i)) {
        List<Around> ways = new ArrayList<>(best);
        ways.set(i, other);
        best = trial.better(best, ways);
      }
    }
    return boxes(best);
  }

  private List<Around> alike(int k) {
    return choices.stream().map(c -> c.get(Math.min(k, c.size() - 1))).toList();
  }

  private static List<BoxOut> boxes(List<Around> ways) {
    return ways.stream().flatMap(w -> w.boxes().stream()).toList();
  }

  /** What was tried so far. */
  private final class Trial {
    private final ToDoubleFunction<List<BoxOut>> value;
    private final List<List<Around>> seen = new ArrayList<>();
    private double least = Double.POSITIVE_INFINITY;

    Trial(ToDoubleFunction<List<BoxOut>> value) {
      this.value = value;
    }

    List<Around> better(List<Around> best, List<Around> ways) {
      if (seen.contains(ways) || seen.size() >= most) {
        return best;
      }
      seen.add(ways);
      List<BoxOut> boxes = boxes(ways);
      double inches = BoxOuts.rings(boxes).stream().mapToDouble(Ring::perimeter).sum();
      double found = value.applyAsDouble(boxes) + FILLER * inches / 12;
      if (found >= least - 1e-6) {
        return best;
      }
      least = found;
      return ways;
    }
  }
}
