package org.jointwright.measure;

import java.util.Locale;

/**
 * Prints lengths, rounded to a step: {@code 24′-6½″}, {@code 7.470 m}, {@code 100 mm}.
 *
 * <p>Feet are left out below one foot, inches never are beside feet, so a tape reads {@code 9½″},
 * {@code 1′-0″} and {@code 1′-0½″}. To 1 mm and 5 mm, lengths under a metre are in millimetres and
 * longer ones in metres with three decimals; to 1 cm all are in metres with two.
 */
public final class LengthPrinter {
  private static final String MINUS = "\u2212";
  private static final int INCHES_PER_FOOT = 12;
  private static final int MILLIMETRES_PER_METRE = 1000;

  private LengthPrinter() {}

  /** For screens and sheets, with true prime marks and fractions. */
  public static String print(Length length, Rounding to) {
    return switch (to.system()) {
      case FEET_INCHES -> feetInches(length, to, true);
      case METRIC -> metric(length, to, MINUS);
    };
  }

  /** For plan files and other plain text, ASCII only: {@code 24' 6 1/2"}, {@code 7.470 m}. */
  public static String plain(Length length, Rounding to) {
    return switch (to.system()) {
      case FEET_INCHES -> feetInches(length, to, false);
      case METRIC -> metric(length, to, "-");
    };
  }

  private static String feetInches(Length length, Rounding to, boolean fine) {
    long steps = to.steps(length);
    int parts = to.partsOfInch();
    long count = Math.abs(steps);
    long feet = count / ((long) INCHES_PER_FOOT * parts);
    long inches = count / parts % INCHES_PER_FOOT;
    int numerator = (int) (count % parts);

    StringBuilder out = new StringBuilder();
    if (steps < 0) {
      out.append(fine ? MINUS : "-");
    }
    if (feet > 0) {
      out.append(feet).append(fine ? "′-" : "' ");
    }
    if (inches > 0 || numerator == 0 || feet > 0) {
      out.append(inches);
      if (numerator > 0 && !fine) {
        out.append(' ');
      }
    }
    if (numerator > 0) {
      Fraction part = Fraction.of(numerator, parts);
      out.append(fine ? part.print() : part.plain());
    }
    return out.append(fine ? '″' : '"').toString();
  }

  private static String metric(Length length, Rounding to, String minus) {
    long millimetres = to.steps(length) * to.millimetres();
    long count = Math.abs(millimetres);
    String sign = millimetres < 0 ? minus : "";
    if (to == Rounding.CENTIMETRE) {
      return sign + String.format(Locale.ROOT, "%d.%02d m", count / 1000, count % 1000 / 10);
    }
    if (count < MILLIMETRES_PER_METRE) {
      return sign + count + " mm";
    }
    return sign + String.format(Locale.ROOT, "%d.%03d m", count / 1000, count % 1000);
  }
}
