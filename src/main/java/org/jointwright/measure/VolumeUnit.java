package org.jointwright.measure;

/** A unit of volume, made of the unit of length that {@link LengthUnit} gives its source for. */
public enum VolumeUnit {
  /** Cubic foot. */
  CUBIC_FOOT("ft3", LengthUnit.FOOT.inches()),
  /** Cubic yard, what ready-mixed concrete is sold by in the United States. */
  CUBIC_YARD("yd3", 3 * LengthUnit.FOOT.inches()),
  /** Cubic metre. */
  CUBIC_METRE("m3", LengthUnit.METRE.inches());

  private final String symbol;
  private final double side;

  VolumeUnit(String symbol, double side) {
    this.symbol = symbol;
    this.side = side;
  }

  /** The unit's symbol as plan files write it, {@code "yd3"} for example. */
  public String symbol() {
    return symbol;
  }

  /** How many cubic inches one of this unit is. */
  public double cubicInches() {
    return side * side * side;
  }

  /** The unit that concrete is ordered by: cubic yards or cubic metres. */
  public static VolumeUnit of(UnitSystem system) {
    return system == UnitSystem.METRIC ? CUBIC_METRE : CUBIC_YARD;
  }
}
