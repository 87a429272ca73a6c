package org.jointwright.designer.ready;

/**
 * A size that a ready shape asks for.
 *
 * @param name what it is called in the words of the window
 * @param usual what it is at first; inches, or degrees for an angle
 * @param least the least it may be
 * @param most the most it may be
 * @param isAngle whether it counts degrees
 */
public record ReadySize(String name, double usual, double least, double most, boolean isAngle) {
  /** The longest that any size of a ready shape may be, inches: the longest slab, a mile. */
  private static final double LONGEST = org.jointwright.plan.Sizes.LONGEST;

  private static final double METRE = 1000 / 25.4;

  static ReadySize feet(String name, double feet) {
    return new ReadySize(name, 12 * feet, 1, LONGEST, false);
  }

  /** A length that may be nothing. */
  static ReadySize perhaps(String name, double feet) {
    return new ReadySize(name, 12 * feet, 0, LONGEST, false);
  }

  static ReadySize degrees(String name, double usual, double least, double most) {
    return new ReadySize(name, usual, least, most, true);
  }

  /** What it is at first: in a metric plan the nearest tidy metric length. */
  double usual(boolean isMetric) {
    if (isAngle || !isMetric) {
      return usual;
    }
    double metres = usual / METRE;
    double step = metres < 2 ? 0.1 : 0.5;
    return Math.rint(metres / step) * step * METRE;
  }

  /** Whether {@code value} is one it may be. */
  public boolean allows(double value) {
    return value >= least && value <= most;
  }
}
