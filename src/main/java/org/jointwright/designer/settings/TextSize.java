package org.jointwright.designer.settings;

/** How large everything in the window is, its text above all. */
public enum TextSize {
  /** As large as the system's text. */
  SYSTEM(0),
  /** As the look is meant. */
  USUAL(1),
  /** A quarter larger. */
  LARGER(1.25),
  /** Half as large again. */
  LARGEST(1.5);

  /** The least and the most that the system's text size changes the window by. */
  private static final double LEAST = 1;

  private static final double MOST = 2;

  private final double factor;

  TextSize(double factor) {
    this.factor = factor;
  }

  /**
   * How many times as large as usual, at least 1.
   *
   * @param system how many times as large as usual the system's text is
   */
  public double times(double system) {
    return this == SYSTEM ? Math.clamp(system, LEAST, MOST) : factor;
  }
}
