package org.jointwright.measure;

/**
 * A unit of length. The inch is exactly 25.4 mm (international yard and pound agreement, 1959; NIST
 * SP 811, appendix B.6; from memory).
 */
public enum LengthUnit {
  /** Inch. */
  INCH("in", 1, false),
  /** Foot, 12 in. */
  FOOT("ft", 12, false),
  /** Millimetre. */
  MILLIMETRE("mm", 1 / 25.4, true),
  /** Centimetre. */
  CENTIMETRE("cm", 10 / 25.4, true),
  /** Metre. */
  METRE("m", 1000 / 25.4, true);

  private final String symbol;
  private final double inches;
  private final boolean metric;

  LengthUnit(String symbol, double inches, boolean metric) {
    this.symbol = symbol;
    this.inches = inches;
    this.metric = metric;
  }

  /** The unit's symbol as plan files write it, {@code "ft"} for example. */
  public String symbol() {
    return symbol;
  }

  /** How many inches one of this unit is. */
  public double inches() {
    return inches;
  }

  /** Whether the unit is metric. */
  public boolean isMetric() {
    return metric;
  }
}
