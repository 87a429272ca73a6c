package org.jointwright.measure;

/**
 * How much of a liquid, kept in US gallons.
 *
 * @param gallons the volume in US gallons; finite
 */
public record Liquid(double gallons) {
  /** Exact by definition, 231 in³: NIST Special Publication 811, appendix B.8 (from memory). */
  private static final double LITRES_PER_GALLON = 3.785411784;

  /** Refuses what is not finite. */
  public Liquid {
    if (!Double.isFinite(gallons)) {
      throw new IllegalArgumentException("a liquid must be finite, not " + gallons);
    }
  }

  /** This volume in litres. */
  public double litres() {
    return gallons * LITRES_PER_GALLON;
  }
}
