package org.jointwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Distances along a path, as a tape on it shows them. */
class PathTest {
  private static final Path BENT =
      Path.through(List.of(new Point(0, 0), new Point(30, 0), new Point(30, 40)));

  /** A quarter of a circle of 10 about the origin. */
  private static final Path QUARTER =
      Path.of(
          Arc.through(
              new Point(10, 0),
              new Point(10 * Math.sqrt(0.5), 10 * Math.sqrt(0.5)),
              new Point(0, 10)));

  private static void near(Point is, double x, double y) {
    assertThat(is.distance(new Point(x, y))).isCloseTo(0, within(1e-9));
  }

  @Test
  void aDistanceIsWalkedOffRoundTheBend() {
    near(BENT.at(0), 0, 0);
    near(BENT.at(29), 29, 0);
    near(BENT.at(30), 30, 0);
    near(BENT.at(31), 30, 1);
    near(BENT.at(70), 30, 40);
    near(BENT.middle(), 30, 5);
    near(QUARTER.at(QUARTER.length() / 3), 10 * Math.cos(Math.PI / 6), 5);
  }

  @Test
  void beforeItsStartItIsTheStartAndPastItsEndItGoesOn() {
    near(BENT.at(-5), 0, 0);
    near(BENT.at(72), 30, 42);
    near(QUARTER.at(QUARTER.length() + 3), -3, 10);
  }

  @Test
  void aPointIsTapedWhereThePathIsNearestToIt() {
    assertThat(BENT.along(new Point(12, 7))).isCloseTo(12, within(1e-9));
    assertThat(BENT.along(new Point(33, 10))).isCloseTo(40, within(1e-9));
    assertThat(BENT.along(new Point(-3, -3))).isCloseTo(0, within(1e-9));
    assertThat(QUARTER.along(new Point(7, 7))).isCloseTo(10 * Math.PI / 4, within(1e-9));
  }

  @Test
  void nearIsWhatStandsNoFartherOffThanThat() {
    for (Path path : List.of(BENT, QUARTER)) {
      for (double x = -6; x <= 46; x += 1.7) {
        for (double y = -6; y <= 46; y += 1.3) {
          Point p = new Point(x, y);
          assertThat(path.isNear(p, 5)).as("%s", p).isEqualTo(path.distance(p) <= 5);
        }
      }
    }
    assertThat(BENT.isNear(new Point(10, 5), 5)).as("just within").isTrue();
    assertThat(BENT.isNear(new Point(10, 5.001), 5)).as("just off").isFalse();
  }

  @Test
  void bothUndoEachOther() {
    for (double d = 0; d <= BENT.length(); d += 7) {
      assertThat(BENT.along(BENT.at(d))).isCloseTo(d, within(1e-9));
    }
  }
}
