package org.jointwright.check.face;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/** Which box-outs of straight pieces count as round: this program’s own reading. */
class RoundBoxOutsTest {
  private static final List<Edge> FAR = List.of(new Segment(p(-500, -300), p(500, -300)));

  @Test
  void eightSidesAndMoreAreRoundAndFewerAreNot() {
    assertThat(isRound(polygon(8, 12))).isTrue();
    assertThat(isRound(polygon(8, 12).reversed())).isTrue();
    assertThat(isRound(polygon(12, 20))).isTrue();
    assertThat(isRound(polygon(13, 20))).isTrue();
    assertThat(isRound(polygon(6, 12))).isFalse();
    assertThat(isRound(polygon(4, 12))).isFalse();
  }

  @Test
  void sidesThatTurnLittleButAreFewerThanEightAreNot() {
    // Seven corners of an octagon: one side turns by 90 degrees.
    List<Point> seven = new ArrayList<>(polygon(8, 12).vertices());
    seven.removeLast();
    assertThat(isRound(Ring.of(seven))).isFalse();
  }

  @Test
  void aLongSideAmongManyIsACorner() {
    List<Point> points = new ArrayList<>(polygon(16, 12).vertices());
    points.subList(5, 8).clear();
    assertThat(points).hasSize(13);
    assertThat(isRound(Ring.of(points))).isFalse();
  }

  @Test
  void pointsMayStandHalfAnInchOffTheCircle() {
    assertThat(isRound(pushed(0.45))).isTrue();
    assertThat(isRound(pushed(-0.45))).isTrue();
    assertThat(isRound(pushed(0.6))).isFalse();
    assertThat(isRound(pushed(-0.6))).isFalse();
  }

  /** Twelve sides with one point off the circle. */
  private static Ring pushed(double by) {
    List<Point> points = new ArrayList<>(polygon(12, 20).vertices());
    points.set(2, points.get(2).times((20 + by) / 20));
    return Ring.of(points);
  }

  @Test
  void pointsThatGoBackOnTheCircleAreNone() {
    List<Point> points = new ArrayList<>(polygon(24, 20).vertices());
    Point swapped = points.get(3);
    points.set(3, points.get(4));
    points.set(4, swapped);
    assertThat(isRound(Ring.of(points))).isFalse();
  }

  @Test
  void aCircleLargerThanFiftyFeetIsNone() {
    assertThat(isRound(polygon(100, 590))).isTrue();
    assertThat(isRound(polygon(100, 610))).isFalse();
  }

  @Test
  void whatHasAnArcIsNotMadeOfStraightPieces() {
    List<Edge> edges = new ArrayList<>(polygon(8, 12).edges());
    Edge first = edges.getFirst();
    edges.set(0, Arc.through(first.start(), polygonPoint(16, 12, 1), first.end()));
    assertThat(isRound(new Ring(edges))).isFalse();
  }

  @Test
  void halfACircleAtTheSlabsEdgeIsRoundWithFourPoints() {
    Edge level = new Segment(p(-100, 0), p(100, 0));
    assertThat(RoundBoxOuts.isRound(half(4), List.of(level))).isTrue();
    assertThat(RoundBoxOuts.isRound(half(4).reversed(), List.of(level))).isTrue();
    for (int first = 0; first < 5; first++) {
      List<Point> turned = new ArrayList<>(half(4).vertices());
      java.util.Collections.rotate(turned, first);
      assertThat(RoundBoxOuts.isRound(Ring.of(turned), List.of(level))).isTrue();
    }
    // The side on the edge counts where it is not known to be one.
    assertThat(isRound(half(4))).isFalse();
    // Sides of 60 degrees each are corners.
    assertThat(RoundBoxOuts.isRound(half(3), List.of(level))).isFalse();
  }

  /** Half a circle over the edge y = 0 in so many sides. */
  private static Ring half(int sides) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= sides; i++) {
      points.add(new Point(12, 0).turned(Math.PI * i / sides));
    }
    return Ring.of(points);
  }

  @Test
  void twoSidesOfACircleAreTooFew() {
    // Three points of an octagon over an edge.
    Ring cap = Ring.of(List.of(polygonPoint(8, 12, 1), p(0, 12), polygonPoint(8, 12, 3)));
    double y = cap.vertices().getFirst().y();
    assertThat(RoundBoxOuts.isRound(cap, List.of(new Segment(p(-100, y), p(100, y))))).isFalse();
    Ring four =
        Ring.of(
            List.of(
                polygonPoint(16, 12, 2),
                polygonPoint(16, 12, 3),
                polygonPoint(16, 12, 4),
                polygonPoint(16, 12, 5)));
    Edge chord = four.edges().getLast();
    assertThat(RoundBoxOuts.isRound(four, List.of(chord))).isTrue();
  }

  @Test
  void eachRunOfFreeSidesMustBeRound() {
    Ring strip = strip(p(30, 0));
    List<Edge> sides =
        List.of(new Segment(p(-100, -9), p(100, -9)), new Segment(p(-100, 9), p(100, 9)));
    assertThat(RoundBoxOuts.isRound(strip, sides)).isTrue();
    assertThat(RoundBoxOuts.isRound(strip(p(34, 0)), sides)).isFalse();
  }

  /** A circle of 30 across a strip: a run of five points at either end, one with another middle. */
  private static Ring strip(Point middle) {
    List<Point> points = new ArrayList<>();
    double most = Math.asin(9 / 30.0);
    for (int i = -2; i <= 2; i++) {
      points.add(i == 0 ? middle : new Point(30, 0).turned(most * i / 2));
    }
    for (int i = -2; i <= 2; i++) {
      points.add(new Point(-30, 0).turned(most * i / 2));
    }
    return Ring.of(points);
  }

  @Test
  void aBoxOutThatLiesOnEdgesAllRoundIsNone() {
    Ring octagon = polygon(8, 12);
    assertThat(RoundBoxOuts.isRound(octagon, octagon.edges())).isFalse();
  }

  private static boolean isRound(Ring ring) {
    return RoundBoxOuts.isRound(ring, FAR);
  }

  private static Ring polygon(int sides, double radius) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      points.add(polygonPoint(sides, radius, i));
    }
    return Ring.of(points);
  }

  private static Point polygonPoint(int sides, double radius, int i) {
    return new Point(radius, 0).turned(2 * Math.PI * i / sides);
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
