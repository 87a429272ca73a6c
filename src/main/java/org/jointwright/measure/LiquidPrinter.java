package org.jointwright.measure;

import java.util.Locale;

/** Prints liquids to a tenth: {@code 3.3 gal}, {@code 12.6 L}. */
public final class LiquidPrinter {
  private LiquidPrinter() {}

  /** For screens and sheets. */
  public static String print(Liquid liquid, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> String.format(Locale.ROOT, "%.1f gal", liquid.gallons());
      case METRIC -> String.format(Locale.ROOT, "%.1f L", liquid.litres());
    };
  }
}
