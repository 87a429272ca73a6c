package org.jointwright.check.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;

/** Where a finding about a panel points: well inside it. */
class InsideTest {
  @Test
  void aRectangleIsPointedAtInItsMiddle() {
    assertAt(Region.of(ring(0, 0, 100, 0, 100, 60, 0, 60)), 50, 30);
    assertAt(Region.of(ring(0.5, 0, 1, 0, 1, 60, 0.5, 60)), 0.75, 30);
  }

  @Test
  void ofTwoArmsTheWiderIsPointedAt() {
    // A U with a wide arm at the left, or at the right.
    assertAt(Region.of(ring(0, 0, 100, 0, 100, 60, 80, 60, 80, 10, 40, 10, 40, 60, 0, 60)), 20, 30);
    assertAt(Region.of(ring(0, 0, 100, 0, 100, 60, 60, 60, 60, 10, 20, 10, 20, 60, 0, 60)), 80, 30);
  }

  @Test
  void whatIsOpenIsNotPointedAt() {
    Ring outer = ring(0, 0, 100, 0, 100, 60, 0, 60);
    assertAt(new Region(outer, List.of(ring(10, 20, 70, 20, 70, 40, 10, 40))), 85, 30);
    assertAt(new Region(outer, List.of(ring(30, 20, 90, 20, 90, 40, 30, 40))), 15, 30);
  }

  private static void assertAt(Region region, double x, double y) {
    assertThat(Inside.of(region).distance(new Point(x, y))).isCloseTo(0, within(1e-9));
  }

  private static Ring ring(double... xy) {
    List<Point> points = new java.util.ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return Ring.of(points);
  }
}
