package org.jointwright.designer.settings;

import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;

/**
 * In what measures the window shows and reads lengths. The plan and its joints stay as they are.
 */
public enum Measures {
  /** In the plan's own. */
  PLAN,
  /** In feet and inches. */
  FEET_INCHES,
  /** In metres and millimetres. */
  METRIC;

  /** The measures of a plan whose bare numbers are in {@code plan}. */
  public UnitSystem of(LengthUnit plan) {
    return switch (this) {
      case PLAN -> UnitSystem.of(plan);
      case FEET_INCHES -> UnitSystem.FEET_INCHES;
      case METRIC -> UnitSystem.METRIC;
    };
  }

  /**
   * The unit of a number that is typed without one: the plan's, or the usual one of its measures.
   */
  public LengthUnit bare(LengthUnit plan) {
    if (of(plan) == UnitSystem.of(plan)) {
      return plan;
    }
    return of(plan) == UnitSystem.METRIC ? LengthUnit.METRE : LengthUnit.FOOT;
  }
}
