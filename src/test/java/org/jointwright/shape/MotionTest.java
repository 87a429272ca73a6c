package org.jointwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class MotionTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Motion any(Random random) {
    Point about = p(random.nextInt(200) - 100, random.nextInt(200) - 100);
    double degrees = random.nextInt(720) - 360;
    return switch (random.nextInt(3)) {
      case 0 -> Motion.by(about);
      case 1 -> Motion.turn(about, degrees);
      default -> Motion.mirror(new Mirror(about, p(1, 0).turned(Math.toRadians(degrees))));
    };
  }

  @Test
  void distancesStayAndLeftAndRightOnlyChangeInAMirror() {
    for (long seed = 1; seed <= 100; seed++) {
      Random random = new Random(seed);
      Motion motion = any(random);
      Point a = p(random.nextDouble() * 100, random.nextDouble() * 100);
      Point b = p(random.nextDouble() * 100, random.nextDouble() * 100);
      Point c = p(random.nextDouble() * 100, random.nextDouble() * 100);
      assertThat(motion.of(a).distance(motion.of(b)))
          .as("seed %d", seed)
          .isCloseTo(a.distance(b), within(1e-9));
      double before = b.minus(a).cross(c.minus(a));
      double after = motion.of(b).minus(motion.of(a)).cross(motion.of(c).minus(motion.of(a)));
      assertThat(after)
          .as("seed %d", seed)
          .isCloseTo(motion.isMirrored() ? -before : before, within(1e-6));
    }
  }

  @Test
  void oneAfterTheOtherIsBoth() {
    for (long seed = 1; seed <= 100; seed++) {
      Random random = new Random(seed);
      Motion first = any(random);
      Motion second = any(random);
      Point a = p(random.nextDouble() * 100, random.nextDouble() * 100);
      assertThat(first.then(second).of(a).distance(second.of(first.of(a))))
          .as("seed %d", seed)
          .isLessThan(1e-9);
    }
  }

  @Test
  void anArcGoesWhereItsPointsGo() {
    Arc arc = (Arc) Arc.through(p(0, 0), p(50, 20), p(100, 0));
    for (long seed = 1; seed <= 30; seed++) {
      Motion motion = any(new Random(seed));
      Edge there = motion.of(arc);
      for (double t : new double[] {0, 0.3, 0.5, 1}) {
        assertThat(there.at(t).distance(motion.of(arc.at(t)))).as("seed %d", seed).isLessThan(1e-9);
      }
    }
  }

  @Test
  void quarterTurnsAreExact() {
    assertThat(Motion.turn(p(10, 0), 90).of(p(20, 5))).isEqualTo(p(5, 10));
    assertThat(Motion.turn(p(10, 0), -90).of(p(20, 5))).isEqualTo(p(15, -10));
    assertThat(Motion.turn(p(10, 0), 540).of(p(20, 5))).isEqualTo(p(0, -5));
    assertThat(Motion.mirror(new Mirror(p(10, 3), p(0, 1))).of(p(12, 7))).isEqualTo(p(8, 7));
  }
}
