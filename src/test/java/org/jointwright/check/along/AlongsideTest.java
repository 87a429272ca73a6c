package org.jointwright.check.along;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/** Where a line lies on another: what only crosses it does not. */
class AlongsideTest {
  private static final Edge LINE = new Segment(new Point(0, 0), new Point(100, 0));

  @Test
  void aLineOnALineLiesOnItAndOneBesideItDoesNot() {
    assertThat(length(from(20, 0.4, 60, 0.4))).isCloseTo(40, within(1e-3));
    assertThat(length(from(20, 0.6, 60, 0.6))).isZero();
    assertThat(length(from(80, 0, 130, 0))).isCloseTo(20, within(1e-2));
    assertThat(length(from(20, 50, 60, 50))).isZero();
  }

  @Test
  void aLineThatCrossesSteeplyLiesNowhereOnIt() {
    assertThat(length(from(50, -20, 50, 20))).isZero();
    assertThat(length(from(30, -20, 70, 20))).isZero();
    // At 20 degrees it lies within half an inch for an inch over the sine.
    double rise = 20 * Math.tan(Math.toRadians(20));
    assertThat(length(from(30, -rise, 70, rise)))
        .isCloseTo(1 / Math.sin(Math.toRadians(20)), within(1e-2));
  }

  @Test
  void shortLinesAndArcsAreLookedAtHoweverSteep() {
    assertThat(length(from(50, -2.5, 50, 2.5))).isCloseTo(1, within(1e-3));
    Edge arc = Arc.through(new Point(50, -20), new Point(58, 0), new Point(50, 20));
    assertThat(Stretches.length(Alongside.of(Path.of(arc), List.of(LINE), p -> false)))
        .isBetween(0.9, 1.2);
  }

  @Test
  void whatIsExceptedIsLeftOut() {
    List<Stretches.Stretch> found = Alongside.of(Path.of(LINE), List.of(LINE), p -> p.x() > 30);
    assertThat(Stretches.length(found)).isCloseTo(30, within(1e-2));
  }

  private static double length(Edge edge) {
    return Stretches.length(Alongside.of(Path.of(edge), List.of(LINE), p -> false));
  }

  private static Edge from(double x0, double y0, double x1, double y1) {
    return new Segment(new Point(x0, y0), new Point(x1, y1));
  }
}
