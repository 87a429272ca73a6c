package org.jointwright.check.face;

import org.jointwright.practice.Angles;
import org.jointwright.practice.Corners;
import org.jointwright.practice.Tolerance;

/**
 * Small steps aside in an edge. A corner belongs to one when it and a few corners beside it, all on
 * edges or all on joints and no farther apart than a jog may be, leave no inside corner together.
 */
public final class Jogs {
  private static final int MOST_BESIDE = 4;
  private static final double FARTHEST = Corners.JOG.value().inches() + Tolerance.LENGTH_INCHES;
  private static final double INSIDE = Angles.INSIDE.value() + Tolerance.ANGLE.value();

  private Jogs() {}

  /** Whether a corner belongs to a jog. */
  public static boolean isJog(Loop loop, Knot knot) {
    for (int before = 0; before <= MOST_BESIDE; before++) {
      for (int after = 0; after <= MOST_BESIDE; after++) {
        int places = knot.count() + before + after;
        if (places > knot.count()
            && places < loop.size()
            && levelsOut(loop, knot.first() - before, places)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean levelsOut(Loop loop, int first, int places) {
    boolean hard = loop.step(first - 1).hard();
    double turn = 0;
    double length = 0;
    for (int k = 0; k < places; k++) {
      Step leaving = loop.step(first + k);
      if (leaving.hard() != hard) {
        return false;
      }
      turn += loop.turn(first + k);
      if (k < places - 1) {
        turn += leaving.bend();
        length += leaving.length();
      }
    }
    return length <= FARTHEST && 180 - turn <= INSIDE;
  }
}
