package org.jointwright.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SelfCrossingTest {
  private static final double SAME = 0.005;

  private static Optional<SelfCrossing> of(Edge... edges) {
    return SelfCrossing.of(new Ring(List.of(edges)), SAME);
  }

  private static Segment line(double x0, double y0, double x1, double y1) {
    return new Segment(new Point(x0, y0), new Point(x1, y1));
  }

  /**
   * A side along the ground that goes on in a quarter arc upwards, its centre beside the tangent.
   */
  private static Optional<SelfCrossing> bend(double radius, double down) {
    Point start = new Point(0, 0);
    Point end = new Point(radius, radius);
    double x = Math.sin(Math.PI / 4) * radius;
    Point via = new Point(x + down, radius - x - down);
    return of(
        line(-200, 0, 0, 0),
        Arc.through(start, via, end),
        line(radius, radius, radius, radius + 100),
        line(radius, radius + 100, -200, radius + 100),
        line(-200, radius + 100, -200, 0));
  }

  @Test
  void anArcThatLeavesOnATangentOrNearlyIsNone() {
    assertThat(bend(1200, 0)).isEmpty();
    assertThat(bend(1200, 1.0 / 16)).isEmpty();
    assertThat(bend(1200, -1.0 / 16)).isEmpty();
  }

  @Test
  void anArcThatTurnsBackOnItsLineAndCrossesItIsOne() {
    // It meets the line again some inches from their corner, a hair under it until there.
    Edge back = Arc.through(new Point(100, 0), new Point(96, -0.0005), new Point(40, 2));
    assertThat(of(line(0, 0, 100, 0), back, line(40, 2, 0, 60), line(0, 60, 0, 0)))
        .hasValueSatisfying(c -> assertThat(c.second()).isEqualTo(1));
  }

  @Test
  void aCornerOnAnotherSideIsOne() {
    assertThat(
            of(
                line(0, 0, 100, 0),
                line(100, 0, 100, 50),
                line(100, 50, 50, 0.004),
                line(50, 0.004, 0, 50),
                line(0, 50, 0, 0)))
        .isPresent();
    assertThat(
            of(
                line(0, 0, 100, 0),
                line(100, 0, 100, 50),
                line(100, 50, 50, 0.006),
                line(50, 0.006, 0, 50),
                line(0, 50, 0, 0)))
        .isEmpty();
  }
}
