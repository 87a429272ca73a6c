package org.jointwright.proof.build;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Pairs as many of one kind with those of another as can be, each with one it fits (Kuhn). */
final class Pairs {
  /** Whether one may be paired with another. */
  interface Fit {
    boolean test(int one, int other);
  }

  private final int ones;
  private final int others;
  private final Fit fit;
  private final int[] of;
  private final int[] with;

  Pairs(int ones, int others, Fit fit) {
    this.ones = ones;
    this.others = others;
    this.fit = fit;
    this.of = new int[ones];
    this.with = new int[others];
    Arrays.fill(of, -1);
    Arrays.fill(with, -1);
    for (int i = 0; i < ones; i++) {
      find(i, new boolean[others]);
    }
  }

  private boolean find(int one, boolean[] seen) {
    for (int k = 0; k < others; k++) {
      if (!seen[k] && fit.test(one, k)) {
        seen[k] = true;
        if (with[k] < 0 || find(with[k], seen)) {
          with[k] = one;
          of[one] = k;
          return true;
        }
      }
    }
    return false;
  }

  /** Those of the first kind that stay alone. */
  List<Integer> alone() {
    return IntStream.range(0, ones).filter(i -> of[i] < 0).boxed().toList();
  }
}
