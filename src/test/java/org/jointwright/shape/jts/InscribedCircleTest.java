package org.jointwright.shape.jts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;

class InscribedCircleTest {
  private static Ring box(double x0, double y0, double x1, double y1) {
    return Ring.of(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
  }

  @Test
  void aWalkIsAsWideAsItsCircle() {
    assertThat(InscribedCircle.of(Region.of(box(0, 0, 240, 48))).diameter())
        .isCloseTo(48, within(0.05));
  }

  @Test
  void anOpeningIsKeptOutOf() {
    Region region = new Region(box(0, 0, 100, 100), List.of(box(40, 40, 60, 60)));
    InscribedCircle circle = InscribedCircle.of(region);
    assertThat(circle.radius()).isBetween(22.0, 24.5);
    assertThat(region.holes().getFirst().distance(circle.centre()))
        .isCloseTo(circle.radius(), within(0.1));
  }

  @Test
  void aRoundSlabHoldsItself() {
    Point right = new Point(50, 0);
    Point left = new Point(-50, 0);
    Point middle = new Point(0, 0);
    Ring round =
        new Ring(
            List.of(new Arc(right, left, middle, Math.PI), new Arc(left, right, middle, Math.PI)));
    InscribedCircle circle = InscribedCircle.of(Region.of(round));
    assertThat(circle.radius()).isCloseTo(50, within(0.05));
    assertThat(circle.centre().norm()).isLessThan(0.05);
  }

  @Test
  void aRegionPinchedToAPointHoldsItsLargerLobes() {
    Ring pinched =
        Ring.of(
            List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 60),
                new Point(40, 0),
                new Point(20, 30),
                new Point(0, 30)));
    InscribedCircle circle = InscribedCircle.of(Region.of(pinched));
    // The right angle of legs 60 and 60: radius (60 + 60 - hypotenuse) / 2.
    assertThat(circle.radius()).isCloseTo((120 - Math.hypot(60, 60)) / 2, within(0.05));
    assertThat(circle.centre().x()).isGreaterThan(40);
  }

  @Test
  void aRegionThatCrossesItselfIsRefused() {
    Ring bow =
        Ring.of(
            List.of(new Point(0, 0), new Point(100, 100), new Point(100, 0), new Point(0, 120)));
    assertThatThrownBy(() -> InscribedCircle.of(Region.of(bow)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("crosses itself");
  }
}
