package org.jointwright.practice;

import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;

/** Form boards and the stakes that hold them. */
public final class FormWork {
  /** How far apart stakes stand at most along straight boards. */
  public static final Limit<Length> STAKES =
      Limit.of(Length.feet(3), Cited.read("home builders’ tips on forms", "", "2x4 and 2x6"));

  /** How far apart stakes stand along bent boards. */
  public static final Limit<Length> STAKES_ON_CURVES =
      Limit.of(Length.feet(2), Cited.read("how-to text on walks", "", "stakes"));

  /** How long a board is. */
  public static final Limit<Length> BOARD = Limit.of(Length.feet(16), Cited.practice());

  /** What stakes are set to where tapes are metric, never farther apart than is said, mm. */
  private static final double METRIC_STEP = 100;

  private FormWork() {}

  /**
   * How far apart stakes stand at most, as a crew of those measures sets them: 3 ft, but 900 mm
   * rather than 914 (common practice, no source).
   */
  public static Length stakes(boolean isBent, UnitSystem measures) {
    Length most = (isBent ? STAKES_ON_CURVES : STAKES).value();
    return measures == UnitSystem.METRIC
        ? Length.of(
            Math.floor(most.in(LengthUnit.MILLIMETRE) / METRIC_STEP) * METRIC_STEP,
            LengthUnit.MILLIMETRE)
        : most;
  }
}
