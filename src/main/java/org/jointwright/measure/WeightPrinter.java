package org.jointwright.measure;

import java.util.Locale;

/** Prints weights by the ton, to a tenth: {@code 12.4 tons}, {@code 11.2 t}. */
public final class WeightPrinter {
  private WeightPrinter() {}

  /** For screens and sheets. */
  public static String print(Weight weight, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> String.format(Locale.ROOT, "%.1f tons", weight.tons());
      case METRIC -> String.format(Locale.ROOT, "%.1f t", weight.tonnes());
    };
  }
}
