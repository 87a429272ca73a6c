package org.jointwright.check.along;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class NearnessTest {
  private static final Edge LINE = new Segment(p(0, 0), p(100, 0));

  @Test
  void aPointIsOnALineWithinTheTolerance() {
    assertThat(Nearness.isOn(List.of(LINE), p(50, 0.5), 0.5)).isTrue();
    assertThat(Nearness.isOn(List.of(LINE), p(50, -0.51), 0.5)).isFalse();
    assertThat(Nearness.isOn(List.of(LINE), p(100.4, 0), 0.5)).isTrue();
    assertThat(Nearness.isOn(List.of(LINE), p(100.4, 0.4), 0.5)).isFalse();
    assertThat(Nearness.isOn(List.of(), p(50, 0), 0.5)).isFalse();
  }

  @Test
  void aPointIsBesideALineOnlyWhereItsFootIsOnIt() {
    assertThat(beside(50, 0.5)).isTrue();
    assertThat(beside(50, 0.51)).isFalse();
    assertThat(beside(0, 0.3)).isTrue();
    assertThat(beside(100, 0.3)).isTrue();
    assertThat(beside(100.3, 0)).isFalse();
    assertThat(beside(-0.3, 0)).isFalse();
    assertThat(beside(100.3, 0.2)).isFalse();
    assertThat(beside(50, 20)).isFalse();
    assertThat(beside(100.45, 0.45)).isFalse();
  }

  @Test
  void aPointIsBesideALineThatIsAPoint() {
    assertThat(Nearness.isBeside(new Segment(p(5, 5), p(5, 5)), p(5.3, 5), 0.5)).isTrue();
    assertThat(Nearness.isBeside(new Segment(p(5, 5), p(5, 5)), p(5.6, 5), 0.5)).isFalse();
  }

  @Test
  void theDistanceIsThatToTheNearestLine() {
    Edge far = new Segment(p(0, 30), p(100, 30));
    assertThat(Nearness.distance(List.of(far, LINE), p(50, 4))).isCloseTo(4, within(1e-12));
    assertThat(Nearness.distance(List.of(), p(50, 4))).isInfinite();
  }

  private static boolean beside(double x, double y) {
    return Nearness.isBeside(LINE, p(x, y), 0.5);
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
