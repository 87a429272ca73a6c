package org.jointwright.measure;

import java.util.Locale;

/** Prints so much of one thing in another: {@code 139 lb/ft³}, {@code 4.9 m²/L}. */
public final class RatePrinter {
  private RatePrinter() {}

  /** Pounds in a cubic foot, or kilograms in a cubic metre, whole. */
  public static String print(Density density, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> String.format(Locale.ROOT, "%.0f lb/ft³", density.poundsPerCubicFoot());
      case METRIC -> String.format(Locale.ROOT, "%.0f kg/m³", density.kilogramsPerCubicMetre());
    };
  }

  /** Square feet to a gallon, whole, or square metres to a litre, to a tenth. */
  public static String print(Spread spread, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES ->
          String.format(Locale.ROOT, "%.0f ft²/gal", spread.perGallon().squareFeet());
      case METRIC -> String.format(Locale.ROOT, "%.1f m²/L", spread.squareMetresPerLitre());
    };
  }
}
