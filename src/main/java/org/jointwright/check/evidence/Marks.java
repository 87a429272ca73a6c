package org.jointwright.check.evidence;

import org.jointwright.measure.UnitSystem;
import org.jointwright.practice.JointMarks;
import org.jointwright.practice.Tolerance;

/** Whole marks of the tape along an edge. */
public final class Marks {
  /** How near a whole mark is on it, inches; rounding forgiven. */
  public static final double NEAR = Tolerance.MARK.value().inches() + 1e-6;

  private Marks() {}

  /**
   * How far a place on a side is off a whole mark, from the end where it is less; inches.
   *
   * @param length the side's length, inches
   * @param along how far the place is from its first end, inches
   */
  public static double offWhole(double length, double along, UnitSystem units) {
    return Math.min(off(along, units), off(length - along, units));
  }

  private static double off(double distance, UnitSystem units) {
    double step = JointMarks.step(units).value().inches();
    double steps = distance / step;
    return Math.abs(steps - Math.rint(steps)) * step;
  }
}
