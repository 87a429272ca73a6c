package org.jointwright.layout.exact;

import java.util.function.BooleanSupplier;

/** How many programs may still be solved: a count, so that the answer is the same anywhere. */
final class Tries {
  private final BooleanSupplier goOn;
  private int left;

  Tries(int most, BooleanSupplier goOn) {
    this.left = most;
    this.goOn = goOn;
  }

  /** Takes one, if there is one. */
  boolean more() {
    return left-- > 0 && goOn.getAsBoolean();
  }
}
