package org.jointwright.layout;

import java.util.SplittableRandom;

/**
 * Lengths drawn from a seed as a crew would tape them: to the half foot, the inch or the eighth of
 * an inch, or to 100, 10 or 1 mm. The same seed draws the same.
 */
final class Drawn {
  private static final double[] FEET_GRAINS = {6, 1, 1, 0.125};
  private static final double[] METRIC_GRAINS = {100 / 25.4, 10 / 25.4, 10 / 25.4, 1 / 25.4};

  private final SplittableRandom random;
  private final boolean metric;
  private final double grain;

  Drawn(long seed) {
    this.random = new SplittableRandom(seed);
    this.metric = random.nextInt(4) == 0;
    this.grain = metric ? METRIC_GRAINS[random.nextInt(4)] : FEET_GRAINS[random.nextInt(4)];
  }

  /** Whether the lengths are whole millimetres. */
  boolean isMetric() {
    return metric;
  }

  /** A length between two in feet, inches. */
  double feet(double from, double to) {
    return inches(12 * from, 12 * to);
  }

  /** A length between two, inches; the middle where the first is the longer. */
  double inches(double from, double to) {
    double drawn = to <= from ? (from + to) / 2 : from + (to - from) * random.nextDouble();
    return grain * Math.rint(drawn / grain);
  }

  /** A length between two to no grain at all, inches. */
  double loose(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  /** Whole degrees, as radians. */
  double degrees(int from, int to) {
    return Math.toRadians(from + random.nextInt(to - from + 1));
  }

  /** A whole number, the last one too. */
  int count(int from, int to) {
    return from + random.nextInt(to - from + 1);
  }

  /** Whether something comes about that does so once in so many times. */
  boolean onceIn(int times) {
    return random.nextInt(times) == 0;
  }
}
