package org.jointwright.file.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jointwright.measure.LengthUnit;

/**
 * Lengths as decimal numbers of a unit. The decimal is turned into inches exactly and rounded once,
 * so that for every length there is a decimal that gives it back.
 */
public final class Decimals {
  /** No decimal needs more figures than this to give a length back. */
  private static final int MOST_FIGURES = 22;

  /** Numbers smaller than this are taken as nothing. */
  private static final double NOTHING = 1e-12;

  private Decimals() {}

  /** The inches of a decimal number of a unit; infinite when it is too large for any plan. */
  public static double inches(String decimal, LengthUnit unit) {
    double near = Double.parseDouble(decimal);
    // Decided before the exact figures are made: 1e999999999 would be a gigabyte of them.
    if (Math.abs(near) > 1e15) {
      return near > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }
    if (Math.abs(near) < NOTHING) {
      return 0;
    }
    return inches(new BigDecimal(decimal), unit);
  }

  private static double inches(BigDecimal value, LengthUnit unit) {
    BigDecimal over = value.multiply(BigDecimal.valueOf(above(unit)));
    return over.divide(BigDecimal.valueOf(below(unit)), MathContext.DECIMAL128).doubleValue();
  }

  /** The shortest decimal number of a unit that is read back as exactly these inches. */
  public static String shortest(double inches, LengthUnit unit) {
    if (Math.abs(inches) < NOTHING) {
      return "0";
    }
    BigDecimal exact =
        new BigDecimal(inches)
            .multiply(BigDecimal.valueOf(below(unit)))
            .divide(BigDecimal.valueOf(above(unit)), MathContext.DECIMAL128);
    // Up to 15 figures a decimal is the only one near enough, so fewer come by dropping zeros.
    for (int figures = 15; figures < MOST_FIGURES; figures++) {
      BigDecimal tried = exact.round(new MathContext(figures, RoundingMode.HALF_EVEN));
      if (inches(tried, unit) == inches) {
        return plain(tried);
      }
    }
    return plain(exact);
  }

  /** A number to so many decimals at most, no zeros after the last figure. */
  public static String rounded(double value, int decimals) {
    return plain(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN));
  }

  /** A number that is no length, the shortest that is read back as the same. */
  public static String number(double value) {
    return plain(new BigDecimal(Double.toString(value)));
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** An inch is 127/5 mm: so many inches are {@link #below} of the unit. */
  private static long above(LengthUnit unit) {
    return switch (unit) {
      case INCH -> 1;
      case FOOT -> 12;
      case MILLIMETRE -> 5;
      case CENTIMETRE -> 50;
      case METRE -> 5000;
    };
  }

  private static long below(LengthUnit unit) {
    return unit.isMetric() ? 127 : 1;
  }
}
