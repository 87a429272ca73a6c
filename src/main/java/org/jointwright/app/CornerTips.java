package org.jointwright.app;

import org.jointwright.measure.Length;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Corners;

/** What practice says of cutting the tip off a corner. */
public final class CornerTips {
  private CornerTips() {}

  /** Whether a corner is so sharp that its tip should be cut off; degrees inside the concrete. */
  public static boolean isWorthIt(double degrees) {
    return degrees < Angles.SHARP.value();
  }

  /** How far from the corner the ends of the joint usually stand. */
  public static Length usual() {
    double near = Corners.CORNER_JOINT_NEAR.value().inches();
    double far = Corners.CORNER_JOINT_FAR.value().inches();
    return Length.inches((near + far) / 2);
  }
}
