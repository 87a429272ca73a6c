package org.jointwright.wild;

/** What a second opinion says of a rule at a panel. */
enum Verdict {
  BROKEN,
  KEPT,
  /** Too near the limit, or asking for more than plain geometry tells. */
  UNSURE;

  /** Broken where a measure is over a limit, unsure within a margin. */
  static Verdict over(double low, double high, double limit, double margin) {
    if (low > limit + margin) {
      return BROKEN;
    }
    return high < limit - margin ? KEPT : UNSURE;
  }

  /** Broken where one of two is, kept where both are. */
  Verdict and(Verdict other) {
    if (this == BROKEN || other == BROKEN) {
      return BROKEN;
    }
    return this == UNSURE ? this : other;
  }
}
