package org.jointwright.proof.build;

import java.util.function.ToDoubleFunction;

/**
 * Something printed that holds corners in their places.
 *
 * @param name what it is between, {@code A–C}
 * @param from the number of the corner where the tape hooks
 * @param on the number of the corner that is held off the string, or -1 for a pull of the tape
 * @param to the number of the corner where it ends
 * @param says how long the pull is, or how far to the left of the string the corner stands; inches
 * @param slack how much the true one may differ from what is said besides the rounding; inches
 */
record Pull(String name, int from, int on, int to, ToDoubleFunction<Values> says, double slack) {

  /** How long it is, or how far off the string, for corners at those places. */
  double is(double[] at) {
    double dx = at[2 * to] - at[2 * from];
    double dy = at[2 * to + 1] - at[2 * from + 1];
    double d = Math.max(1e-9, Math.hypot(dx, dy));
    if (on < 0) {
      return d;
    }
    double px = at[2 * on] - at[2 * from];
    double py = at[2 * on + 1] - at[2 * from + 1];
    return (dx * py - dy * px) / d;
  }

  /** How it changes as each corner moves: one figure for each coordinate. */
  double[] slope(double[] at) {
    double[] row = new double[at.length];
    double dx = at[2 * to] - at[2 * from];
    double dy = at[2 * to + 1] - at[2 * from + 1];
    double d = Math.max(1e-9, Math.hypot(dx, dy));
    if (on < 0) {
      add(row, from, -dx / d, -dy / d);
      add(row, to, dx / d, dy / d);
      return row;
    }
    double px = at[2 * on] - at[2 * from];
    double py = at[2 * on + 1] - at[2 * from + 1];
    double share = (px * dx + py * dy) / (d * d);
    add(row, from, -dy / d * (share - 1), dx / d * (share - 1));
    add(row, on, -dy / d, dx / d);
    add(row, to, dy / d * share, -dx / d * share);
    return row;
  }

  private static void add(double[] row, int corner, double x, double y) {
    row[2 * corner] += x;
    row[2 * corner + 1] += y;
  }
}
