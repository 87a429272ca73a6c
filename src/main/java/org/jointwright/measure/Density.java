package org.jointwright.measure;

/**
 * What a volume of something weighs.
 *
 * @param poundsPerCubicFoot pounds in a cubic foot; finite
 */
public record Density(double poundsPerCubicFoot) {
  /** Exact by definition of pound and foot: NIST SP 811, appendix B.8 (from memory). */
  private static final double KILOGRAMS_PER_CUBIC_METRE = 0.45359237 / (0.3048 * 0.3048 * 0.3048);

  private static final double CUBIC_INCHES_PER_CUBIC_FOOT = 1728;

  /** Refuses what is not finite. */
  public Density {
    if (!Double.isFinite(poundsPerCubicFoot)) {
      throw new IllegalArgumentException("a density must be finite, not " + poundsPerCubicFoot);
    }
  }

  /** This density in kilograms in a cubic metre. */
  public double kilogramsPerCubicMetre() {
    return poundsPerCubicFoot * KILOGRAMS_PER_CUBIC_METRE;
  }

  /** What that much of it weighs. */
  public Weight of(Volume volume) {
    return new Weight(volume.cubicInches() / CUBIC_INCHES_PER_CUBIC_FOOT * poundsPerCubicFoot);
  }

  /** How much room that weight of it takes. */
  public Volume of(Weight weight) {
    return new Volume(weight.pounds() / poundsPerCubicFoot * CUBIC_INCHES_PER_CUBIC_FOOT);
  }
}
