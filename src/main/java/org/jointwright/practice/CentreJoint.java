package org.jointwright.practice;

import org.jointwright.measure.Length;

/**
 * The longest spacing on a drive by a ready-mix association's table, a stricter check than the
 * rules that count thicknesses.
 */
public final class CentreJoint {
  /** Where the table is published. */
  public static final Cited SOURCE =
      Cited.read("ready-mix association guidelines", "", "driveway joint spacing");

  private CentreJoint() {}

  /** The longest spacing at a thickness; between the table's 3, 4 and 5 in taken in proportion. */
  public static Length longest(Length thickness) {
    double t = thickness.inches();
    if (t <= 3) {
      return Length.feet(8);
    }
    return Length.feet(t < 5 ? 8 + 2 * (t - 3) : 12);
  }

  /** Whether a drive of that width needs a joint down its middle. */
  public static boolean needed(Length width, Length thickness) {
    return width.compareTo(longest(thickness)) > 0;
  }
}
