package org.jointwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Source;

/** Lines met one after the other on a way across a slab, and the joint among them. */
final class Stops {
  /** Parts that differ by no more are equal, inches: joints stand at whole inches. */
  private static final double EQUAL = 1 + 1.0 / 16;

  /** Lines nearer to each other than this are one, inches. */
  private static final double SAME = Ground.ON;

  private record Stop(double at, Source line, boolean beside) {}

  private final List<Stop> stops = new ArrayList<>();

  /**
   * One more line.
   *
   * @param at how far along the way it is met, inches; the joint itself is met at 0
   * @param beside whether it runs beside the joint, so that it can bound equal parts
   */
  void add(double at, Source line, boolean beside) {
    if (Math.abs(at) > SAME && stops.stream().noneMatch(s -> Math.abs(s.at() - at) <= SAME)) {
      stops.add(new Stop(at, line, beside));
    }
  }

  /** The nearest lines on either side, where both run beside the joint. */
  Optional<Origin> between() {
    Optional<Stop> left =
        stops.stream().filter(s -> s.at() < 0).max(Comparator.comparingDouble(Stop::at));
    Optional<Stop> right =
        stops.stream().filter(s -> s.at() > 0).min(Comparator.comparingDouble(Stop::at));
    if (left.isEmpty() || right.isEmpty() || !left.get().beside() || !right.get().beside()) {
      return Optional.empty();
    }
    Stop a = left.get();
    Stop b = right.get();
    return Optional.of(new Origin.Between(Where.ALONG, a.line(), -a.at(), b.line(), b.at()));
  }

  /** The widest stretch of equal parts that the joint divides, if there is one. */
  Optional<Origin.Even> even() {
    List<Stop> all = new ArrayList<>(stops);
    Stop self = new Stop(0, new Source.OnJoint(""), true);
    all.add(self);
    all.sort(Comparator.comparingDouble(Stop::at));
    int k = all.indexOf(self);
    Optional<Origin.Even> best = Optional.empty();
    for (int i = 0; i < k; i++) {
      for (int j = k + 1; j < all.size(); j++) {
        if (isEven(all, i, j) && best.map(Origin.Even::of).orElse(0) < j - i) {
          Stop from = all.get(i);
          Stop to = all.get(j);
          double whole = to.at() - from.at();
          best =
              Optional.of(
                  new Origin.Even(
                      Where.ALONG,
                      from.line(),
                      to.line(),
                      k - i,
                      j - i,
                      -from.at() / whole,
                      whole));
        }
      }
    }
    return best;
  }

  private static boolean isEven(List<Stop> all, int first, int last) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = first; i < last; i++) {
      double gap = all.get(i + 1).at() - all.get(i).at();
      least = Math.min(least, gap);
      most = Math.max(most, gap);
    }
    boolean bounded = all.subList(first, last + 1).stream().allMatch(Stop::beside);
    return bounded && most - least <= EQUAL;
  }
}
