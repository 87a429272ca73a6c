package org.jointwright.measure;

import java.util.Locale;

/** Prints areas: {@code 412 ft²} from 100 ft² up, {@code 41.2 ft²} under it, {@code 38.25 m²}. */
public final class AreaPrinter {
  private static final double WHOLE_FEET_FROM = 100;

  private AreaPrinter() {}

  /** For screens and sheets. */
  public static String print(Area area, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES ->
          String.format(
              Locale.ROOT,
              Math.abs(area.squareFeet()) < WHOLE_FEET_FROM ? "%.1f ft²" : "%.0f ft²",
              area.squareFeet());
      case METRIC -> String.format(Locale.ROOT, "%.2f m²", area.squareMetres());
    };
  }
}
