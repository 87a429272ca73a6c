package org.jointwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Source;

/** Lines met one after the other on a way across a slab, and the joint among them. */
final class Stops {
  /** A line this near to its exact place is there, inches: joints stand at whole inches. */
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

  /**
   * The equal parts that the joint is one of the lines between: from anchor to anchor where those
   * are equal, else, for a joint that is no anchor, the widest stretch of equal parts there.
   */
  Optional<Origin.Even> even(Anchors anchors, Source own) {
    List<Stop> all = new ArrayList<>(stops);
    Stop self = new Stop(0, own, true);
    all.add(self);
    all.sort(Comparator.comparingDouble(Stop::at));
    int k = all.indexOf(self);
    int left = k - 1;
    while (left > 0 && !anchors.hold(all.get(left).line())) {
      left--;
    }
    int right = k + 1;
    while (right < all.size() - 1 && !anchors.hold(all.get(right).line())) {
      right++;
    }
    if (left >= 0 && right < all.size() && isEven(all, left, right)) {
      return Optional.of(even(all, left, k, right));
    }
    return anchors.hold(own)
        ? Optional.empty()
        : widest(all.subList(Math.max(left, 0), Math.min(right + 1, all.size())), self);
  }

  private static Optional<Origin.Even> widest(List<Stop> all, Stop self) {
    int k = all.indexOf(self);
    Optional<Origin.Even> best = Optional.empty();
    for (int i = 0; i < k; i++) {
      for (int j = k + 1; j < all.size(); j++) {
        if (isEven(all, i, j) && best.map(Origin.Even::of).orElse(0) < j - i) {
          best = Optional.of(even(all, i, k, j));
        }
      }
    }
    return best;
  }

  private static Origin.Even even(List<Stop> all, int i, int k, int j) {
    Stop from = all.get(i);
    Stop to = all.get(j);
    double whole = to.at() - from.at();
    double share = -from.at() / whole;
    return new Origin.Even(Where.ALONG, from.line(), to.line(), k - i, j - i, share, whole);
  }

  /** Whether every line from the first to the last stands where equal parts would put it. */
  private static boolean isEven(List<Stop> all, int first, int last) {
    double from = all.get(first).at();
    double part = (all.get(last).at() - from) / (last - first);
    for (int i = first; i <= last; i++) {
      if (!all.get(i).beside() || Math.abs(all.get(i).at() - from - (i - first) * part) > EQUAL) {
        return false;
      }
    }
    return true;
  }
}
