package org.jointwright.sheet.owner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/** Slabs that are told by their width and their length along their middle. */
class BentTest {
  private static Ring ring(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return Ring.of(points);
  }

  private static Ring corner(double across, double up) {
    return ring(0, 0, across, 0, across, 36, 36, 36, 36, up, 0, up);
  }

  @Test
  void aWalkRoundACornerIsAsLongAsItsMiddle() {
    // Along the middle 18 in short of the corner each way: 102 and 222 in.
    assertThat(Bent.of(corner(120, 240)))
        .hasValueSatisfying(
            b -> {
              assertThat(b.width()).isCloseTo(36, within(1e-9));
              assertThat(b.length()).isCloseTo(324, within(1e-9));
            });
  }

  @Test
  void aPointOnASideChangesNothing() {
    Ring split = ring(0, 0, 60, 0, 120, 0, 120, 36, 36, 36, 36, 100, 36, 240, 0, 240, 0, 90);
    assertThat(Bent.of(split)).isEqualTo(Bent.of(corner(120, 240)));
    assertThat(Bent.of(split.reversed())).isEqualTo(Bent.of(corner(120, 240)));
  }

  @Test
  void aShortOneIsAnLAndSaidOverAll() {
    // Along the middle 4 times the width is 144 in; half an inch less is no walk.
    assertThat(Bent.of(corner(90, 90))).isPresent();
    assertThat(Bent.of(corner(90, 89.5))).isEmpty();
  }

  @Test
  void oneThatGrowsWiderIsSaidOverAll() {
    assertThat(Bent.of(ring(0, 0, 240, 0, 240, 36, 36, 36, 36, 240, 0, 240))).isPresent();
    assertThat(Bent.of(ring(0, 0, 240, 0, 240, 37, 36, 36, 36, 240, 0, 240))).isEmpty();
    assertThat(Bent.of(ring(0, 0, 240, 0, 240, 36, 48, 36, 48, 240, 0, 240))).isEmpty();
  }

  @Test
  void aStraightOneIsSaidOverAll() {
    assertThat(Bent.of(ring(0, 0, 400, 0, 400, 36, 0, 36))).isEmpty();
  }

  @Test
  void aQuarterOfARingIsAsLongAsItsMiddleArc() {
    Point centre = new Point(0, 0);
    List<Edge> edges =
        List.of(
            new Segment(new Point(100, 0), new Point(200, 0)),
            new Arc(new Point(200, 0), new Point(0, 200), centre, Math.PI / 2),
            new Segment(new Point(0, 200), new Point(0, 100)),
            new Arc(new Point(0, 100), new Point(100, 0), centre, -Math.PI / 2));
    assertThat(Bent.of(new Ring(edges)))
        .hasValueSatisfying(
            b -> {
              assertThat(b.width()).isCloseTo(100, within(1e-9));
              assertThat(b.length()).isCloseTo(150 * Math.PI / 2, within(1e-9));
            });
  }

  @Test
  void aCircleIsSaidOverAll() {
    Point centre = new Point(0, 0);
    Point east = new Point(60, 0);
    Point west = new Point(-60, 0);
    List<Edge> halves =
        List.of(new Arc(east, west, centre, Math.PI), new Arc(west, east, centre, Math.PI));
    assertThat(Bent.of(new Ring(halves))).isEmpty();
  }
}
