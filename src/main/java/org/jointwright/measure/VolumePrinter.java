package org.jointwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prints volumes to a hundredth: {@code 9 yd³}, {@code 8.64 yd³}, {@code 6.6 m³}. */
public final class VolumePrinter {
  private static final int DECIMALS = 2;

  /** Figures beyond this are the noise of arithmetic: without it 8.645 would round down. */
  private static final int NOISE = 9;

  private VolumePrinter() {}

  /** For screens and sheets, in the unit that concrete is ordered by. */
  public static String print(Volume volume, UnitSystem system) {
    VolumeUnit unit = VolumeUnit.of(system);
    BigDecimal rounded =
        new BigDecimal(volume.in(unit))
            .setScale(NOISE, RoundingMode.HALF_UP)
            .setScale(DECIMALS, RoundingMode.HALF_UP);
    String figure = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    return figure + " " + (unit == VolumeUnit.CUBIC_METRE ? "m³" : "yd³");
  }
}
