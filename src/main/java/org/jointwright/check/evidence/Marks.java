package org.jointwright.check.evidence;

import org.jointwright.measure.UnitSystem;
import org.jointwright.practice.JointMarks;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;

/** Whole marks of the tape along an edge. */
public final class Marks {
  /** How near a whole mark is on it, inches; rounding forgiven. */
  public static final double NEAR = Tolerance.MARK.value().inches() + 1e-6;

  private Marks() {}

  /** How far a place on an edge is off a whole mark from the nearer-to-whole end, inches. */
  public static double offWhole(Edge edge, double along, UnitSystem units) {
    double length = edge.length();
    return Math.min(off(along * length, units), off((1 - along) * length, units));
  }

  private static double off(double distance, UnitSystem units) {
    double step = JointMarks.step(units).value().inches();
    double steps = distance / step;
    return Math.abs(steps - Math.rint(steps)) * step;
  }
}
