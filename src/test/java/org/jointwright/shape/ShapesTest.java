package org.jointwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ShapesTest {
  @Test
  void arcThroughThreePointsHasItsCircle() {
    Arc arc = (Arc) Arc.through(p(10, 0), p(0, 10), p(-10, 0));
    assertThat(arc.centre().norm()).isCloseTo(0, within(1e-12));
    assertThat(arc.radius()).isCloseTo(10, within(1e-12));
    assertThat(arc.sweep()).isCloseTo(Math.PI, within(1e-12));
  }

  @Test
  void arcMayTurnByMoreThanHalf() {
    Arc arc = (Arc) Arc.through(p(10, 0), p(-10, 0), p(0, -10));
    assertThat(arc.sweep()).isCloseTo(1.5 * Math.PI, within(1e-12));
    Arc clockwise = (Arc) Arc.through(p(10, 0), p(0, -10), p(0, 10));
    assertThat(clockwise.sweep()).isCloseTo(-1.5 * Math.PI, within(1e-12));
  }

  @Test
  void pointOnTheChordOfAnArcIsInsideTheCircle() {
    Edge up = Arc.through(p(10, 0), p(0, 10), p(-10, 0));
    Edge down = Arc.through(p(-10, 0), p(0, -10), p(10, 0));
    for (Ring circle :
        List.of(new Ring(List.of(up, down)), new Ring(List.of(up, down)).reversed())) {
      assertThat(circle.contains(p(4, 0))).isTrue();
      assertThat(circle.contains(p(-4, 0))).isTrue();
      assertThat(circle.contains(p(0, 0))).isTrue();
    }
  }

  @Test
  void flatBowIsAStraightEdge() {
    assertThat(Arc.through(p(0, 0), p(50, 1e-6), p(100, 0))).isInstanceOf(Segment.class);
  }

  @Test
  void everyPointOfAnArcIsNearestToItself() {
    for (Arc arc :
        List.of(
            (Arc) Arc.through(p(10, 0), p(-10, 0), p(0, -10)),
            (Arc) Arc.through(p(10, 0), p(0, -10), p(0, 10)))) {
      for (int i = 0; i <= 20; i++) {
        assertThat(arc.nearest(arc.at(i / 20.0))).isCloseTo(i / 20.0, within(1e-9));
      }
    }
  }

  @Test
  void areaOfADiscIsExact() {
    Ring disc =
        new Ring(
            List.of(
                Arc.through(p(110, 100), p(100, 110), p(90, 100)),
                Arc.through(p(90, 100), p(100, 90), p(110, 100))));
    assertThat(disc.signedArea()).isCloseTo(100 * Math.PI, within(1e-9));
    assertThat(disc.reversed().signedArea()).isCloseTo(-100 * Math.PI, within(1e-9));
  }

  @Test
  void pointsBetweenChordAndArcAreInside() {
    Ring half =
        new Ring(
            List.of(new Segment(p(-10, 0), p(10, 0)), Arc.through(p(10, 0), p(0, 10), p(-10, 0))));
    assertThat(half.contains(p(0, 9.9))).isTrue();
    assertThat(half.contains(p(9, 1))).isTrue();
    assertThat(half.contains(p(9.9, 9.9))).isFalse();
    assertThat(half.contains(p(0, -0.1))).isFalse();
    Ring bite =
        new Ring(
            List.of(
                new Segment(p(-10, 0), p(10, 0)),
                new Segment(p(10, 0), p(10, 20)),
                new Segment(p(10, 20), p(-10, 20)),
                new Segment(p(-10, 20), p(-10, 10)),
                Arc.through(p(-10, 10), p(-5, 5), p(-10, 0))));
    assertThat(bite.contains(p(-9, 5))).isFalse();
    assertThat(bite.contains(p(-4, 5))).isTrue();
  }

  @Test
  void segmentCrossesAnArcTwice() {
    Arc arc = (Arc) Arc.through(p(10, 0), p(0, 10), p(-10, 0));
    List<Crossing> met = Crossing.of(new Segment(p(-20, 6), p(20, 6)), arc);
    assertThat(met).extracting(c -> Math.round(c.at().x())).containsExactly(-8L, 8L);
    assertThat(Crossing.of(new Segment(p(-20, -6), p(20, -6)), arc)).isEmpty();
  }

  @Test
  void enclosingRectangleOfATurnedRectangleIsItself() {
    Ring ring = Ring.of(List.of(p(0, 0), p(40, 30), p(34, 38), p(-6, 8)));
    EnclosingRectangle box = EnclosingRectangle.of(ring);
    assertThat(box.longSide()).isCloseTo(50, within(1e-9));
    assertThat(box.shortSide()).isCloseTo(10, within(1e-9));
    assertThat(box.aspect()).isCloseTo(5, within(1e-9));
    assertThat(Hull.of(ring).width()).isCloseTo(10, within(1e-9));
  }

  @Test
  void ofRectanglesThatTieTheSquarestCounts() {
    // An acute triangle has three rectangles of one area, one on each side.
    Ring triangle = Ring.of(List.of(p(0, 0), p(10, 0), p(4, 9)));
    assertThat(EnclosingRectangle.of(triangle).aspect()).isLessThan(10.0 / 9);
  }

  @Test
  void tangentArcIsNoCorner() {
    List<Edge> edges =
        List.of(
            new Segment(p(0, 0), p(10, 0)),
            Arc.through(p(10, 0), p(20, 10), p(10, 20)),
            new Segment(p(10, 20), p(0, 20)),
            new Segment(p(0, 20), p(0, 0)));
    assertThat(Corner.of(edges, 0.5))
        .extracting(c -> Math.round(c.interior()))
        .containsExactly(180L, 180L, 90L, 90L);
  }

  @Test
  void cornersWithinTheToleranceCountAsOne() {
    List<Edge> edges =
        Ring.of(List.of(p(0, 0), p(10, 0), p(10.2, 0.2), p(10.2, 10), p(0, 10))).edges();
    List<Corner> corners = Corner.of(edges, 0.5);
    assertThat(corners).hasSize(4);
    assertThat(corners).allMatch(c -> Math.abs(c.interior() - 90) < 1e-9);
  }

  @Test
  void cuspCountsAsNoDegreesAndSlitAsAFullTurn() {
    // A line and an arc that leaves it backwards, tangent: inside between them, or outside.
    List<Edge> cusp =
        List.of(
            new Segment(p(0, 0), p(20, 0)),
            Arc.through(p(20, 0), p(12.929, 2.929), p(10, 10)),
            new Segment(p(10, 10), p(0, 0)));
    assertThat(Corner.of(cusp, 0.5).getFirst().interior()).isCloseTo(0, within(0.1));
    List<Edge> around = new Ring(cusp).reversed().edges();
    assertThat(Corner.of(around, 0.5)).anyMatch(c -> Math.abs(c.interior() - 360) < 0.1);
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
