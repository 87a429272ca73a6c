package org.jointwright.measure;

/**
 * A weight, kept in pounds.
 *
 * @param pounds the weight in pounds; finite
 */
public record Weight(double pounds) {
  /** A short ton, the ton that stone is sold by in the United States, in pounds. */
  private static final double TON = 2000;

  /** Exact by definition: NIST Special Publication 811, appendix B.8 (from memory). */
  private static final double KILOGRAMS_PER_POUND = 0.45359237;

  private static final double TONNE = 1000;

  /** Refuses what is not finite. */
  public Weight {
    if (!Double.isFinite(pounds)) {
      throw new IllegalArgumentException("a weight must be finite, not " + pounds);
    }
  }

  /** This weight in short tons of 2,000 lb. */
  public double tons() {
    return pounds / TON;
  }

  /** This weight in metric tons of 1,000 kg. */
  public double tonnes() {
    return pounds * KILOGRAMS_PER_POUND / TONNE;
  }
}
