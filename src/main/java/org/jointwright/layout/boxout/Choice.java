package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jointwright.plan.BoxOut;

/**
 * Chooses among the box-outs of a slab's objects by what layouts come of them: all alike first, then
 * one object at a time. Bounded by count, so not every combination is seen.
 *
 * @param choices for each object, the likeliest first, none empty
 * @param most how many layouts may be tried
 */
public record Choice(List<List<BoxOut>> choices, int most) {
  /** What a foot of filler weighs against a foot of joint: of two as good the smaller is made. */
  private static final double FILLER = 0.1;

  /**
   * A set of box-outs and what came of it.
   *
   * @param boxes one for each object
   * @param laid what was laid for them
   * @param value how good it is; less is better
   */
  public record Tried<T>(List<BoxOut> boxes, T laid, double value) {}

  /**
   * The best found.
   *
   * @param lay what comes of a set of box-outs, with its value
   */
  public <T> Tried<T> best(Function<List<BoxOut>, Tried<T>> lay) {
    List<List<BoxOut>> seen = new ArrayList<>();
    List<BoxOut> first = alike(0);
    seen.add(first);
    Tried<T> best = weighed(lay.apply(first));
    int longest = choices.stream().mapToInt(List::size).max().orElse(0);
    for (int k = 1; k < longest && seen.size() < most; k++) {
      best = better(best, alike(k), seen, lay);
    }
    for (int i = 0; i < choices.size(); i++) {
      for (BoxOut other : choices.get(i)) {
        List<BoxOut> boxes = new ArrayList<>(best.boxes());
        boxes.set(i, other);
        if (seen.size() < most) {
          best = better(best, boxes, seen, lay);
        }
      }
    }
    return best;
  }

  private List<BoxOut> alike(int k) {
    return choices.stream().map(c -> c.get(Math.min(k, c.size() - 1))).toList();
  }

  private static <T> Tried<T> better(
      Tried<T> best,
      List<BoxOut> boxes,
      List<List<BoxOut>> seen,
      Function<List<BoxOut>, Tried<T>> lay) {
    if (seen.contains(boxes)) {
      return best;
    }
    seen.add(boxes);
    Tried<T> tried = weighed(lay.apply(boxes));
    return tried.value() < best.value() - 1e-6 ? tried : best;
  }

  private static <T> Tried<T> weighed(Tried<T> tried) {
    double inches = 0;
    for (BoxOut b : tried.boxes()) {
      inches += b.outline().ring().perimeter();
    }
    return new Tried<>(tried.boxes(), tried.laid(), tried.value() + FILLER * inches / 12);
  }
}
