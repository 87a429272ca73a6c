package org.jointwright.measure;

/** The two families of units that a reader may want, both first-class. */
public enum UnitSystem {
  /** Feet, inches and fractions of an inch. */
  FEET_INCHES,
  /** Metres and millimetres. */
  METRIC;

  /** The finest step that a tape is read to on a sheet: 1/8 in or 5 mm (common practice). */
  public Rounding rounding() {
    return this == METRIC ? Rounding.FIVE_MILLIMETRES : Rounding.EIGHTH_INCH;
  }

  /** The finest step that anything is told to, a depth or a width of a cut: 1/16 in or 1 mm. */
  public Rounding finest() {
    return this == METRIC ? Rounding.MILLIMETRE : Rounding.SIXTEENTH_INCH;
  }

  /** The family that {@code unit} belongs to. */
  public static UnitSystem of(LengthUnit unit) {
    return unit.isMetric() ? METRIC : FEET_INCHES;
  }
}
