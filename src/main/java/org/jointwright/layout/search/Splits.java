package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How the two bays at a rung may be split into panels: the shares of the rung at which the joints
 * of the bay before it end, and those at which the joints of the bay after it begin.
 *
 * @param before the shares of the bay before, rising, without 0 and 1
 * @param after the same of the bay after
 */
record Splits(List<Double> before, List<Double> after) {
  /** Copies the lists. */
  Splits {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /** How many joints end there with none beyond. */
  int tees() {
    int met = (int) before.stream().filter(after::contains).count();
    return before.size() + after.size() - 2 * met;
  }

  private Splits turned() {
    return new Splits(after, before);
  }

  /**
   * All that are worth trying up to so many panels in a bay: the same on both sides; evenly on one
   * side and on the other one joint more or less, or twice as many panels.
   */
  static List<Splits> upTo(int panels) {
    Set<Splits> found = new LinkedHashSet<>();
    for (int n = 1; n <= panels; n++) {
      List<Double> even = even(n);
      found.add(new Splits(even, even));
      List<List<Double>> others = new ArrayList<>();
      for (int i = 0; i < even.size(); i++) {
        List<Double> less = new ArrayList<>(even);
        less.remove(i);
        others.add(less);
      }
      for (int gap = 0; gap < n && n < panels; gap++) {
        List<Double> more = new ArrayList<>(even);
        more.add(gap, (gap + 0.5) / n);
        others.add(more);
      }
      if (2 * n <= panels) {
        List<Double> twice = new ArrayList<>(even);
        for (int gap = n - 1; gap >= 0; gap--) {
          twice.add(gap, (gap + 0.5) / n);
        }
        others.add(twice);
      }
      for (List<Double> other : others) {
        Splits s = new Splits(even, other);
        found.add(s);
        found.add(s.turned());
      }
    }
    return List.copyOf(found);
  }

  private static List<Double> even(int parts) {
    List<Double> shares = new ArrayList<>();
    for (int k = 1; k < parts; k++) {
      shares.add((double) k / parts);
    }
    return shares;
  }
}
