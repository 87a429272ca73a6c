package org.jointwright.measure;

/**
 * To what step a length is printed. Only printing rounds; the model keeps what it has.
 *
 * <p>A length half way between two steps goes to the one farther from zero, and so does one that
 * misses half way only by the noise of floating-point arithmetic.
 */
public enum Rounding {
  /** To 1/16 in. */
  SIXTEENTH_INCH(LengthUnit.INCH, 1, 16),
  /** To 1/8 in. */
  EIGHTH_INCH(LengthUnit.INCH, 1, 8),
  /** To 1/4 in. */
  QUARTER_INCH(LengthUnit.INCH, 1, 4),
  /** To 1/2 in. */
  HALF_INCH(LengthUnit.INCH, 1, 2),
  /** To 1 in. */
  WHOLE_INCH(LengthUnit.INCH, 1, 1),
  /** To 1 mm. */
  MILLIMETRE(LengthUnit.MILLIMETRE, 1, 1),
  /** To 5 mm. */
  FIVE_MILLIMETRES(LengthUnit.MILLIMETRE, 5, 1),
  /** To 1 cm. */
  CENTIMETRE(LengthUnit.MILLIMETRE, 10, 1);

  /**
   * How far from half way, in steps, still counts as half way: far above noise, unseen in print.
   */
  private static final double NOISE = 1e-9;

  /** How far over a step, in steps, is still that step: what files round off stays unseen. */
  private static final double ALMOST = 1e-6;

  private final LengthUnit unit;
  private final int units;
  private final int parts;

  Rounding(LengthUnit unit, int units, int parts) {
    this.unit = unit;
    this.units = units;
    this.parts = parts;
  }

  /** The step itself. */
  public Length step() {
    return Length.of((double) units / parts, unit);
  }

  /** Which family of units prints to this step. */
  public UnitSystem system() {
    return UnitSystem.of(unit);
  }

  /** The length nearest to {@code length} that is a whole number of steps. */
  public Length round(Length length) {
    return Length.of((double) steps(length) * units / parts, unit);
  }

  /** The least length that is a whole number of steps and no shorter, but for noise. */
  public Length up(Length length) {
    double exact = length.in(unit) * parts / units;
    return Length.of(Math.ceil(exact - ALMOST) * units / parts, unit);
  }

  /** How many steps {@code length} is, rounded. */
  long steps(Length length) {
    double exact = Math.abs(length.in(unit)) * parts / units;
    long whole = (long) Math.floor(exact + 0.5 + NOISE);
    return length.inches() < 0 ? -whole : whole;
  }

  /** How many steps one inch has; 1 for metric steps, where it means nothing. */
  int partsOfInch() {
    return parts;
  }

  /** How many millimetres one step has; 1 for steps of an inch, where it means nothing. */
  int millimetres() {
    return units;
  }
}
