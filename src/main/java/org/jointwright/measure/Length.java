package org.jointwright.measure;

/**
 * A length. Kept in inches, exactly as the geometry uses it; printing rounds, the model never does.
 *
 * @param inches the length in inches; finite, negative where the context allows
 */
public record Length(double inches) implements Comparable<Length> {
  /** No length at all. */
  public static final Length ZERO = new Length(0);

  public Length {
    if (!Double.isFinite(inches)) {
      throw new IllegalArgumentException("a length must be finite, not " + inches);
    }
  }

  /** A length of {@code value} of {@code unit}. */
  public static Length of(double value, LengthUnit unit) {
    return new Length(value * unit.inches());
  }

  /** A length in inches. */
  public static Length inches(double value) {
    return new Length(value);
  }

  /** A length in feet. */
  public static Length feet(double value) {
    return of(value, LengthUnit.FOOT);
  }

  /** A length in millimetres. */
  public static Length millimetres(double value) {
    return of(value, LengthUnit.MILLIMETRE);
  }

  /** This length counted in {@code unit}. */
  public double in(LengthUnit unit) {
    return inches / unit.inches();
  }

  /** This length in feet. */
  public double feet() {
    return in(LengthUnit.FOOT);
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(inches, other.inches);
  }
}
