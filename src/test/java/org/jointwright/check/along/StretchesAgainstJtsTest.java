package org.jointwright.check.along;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The walk along a line finds the same lengths as JTS finds with a buffer. */
class StretchesAgainstJtsTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  private static Geometry line(Point a, Point b) {
    return JTS.createLineString(
        new Coordinate[] {new Coordinate(a.x(), a.y()), new Coordinate(b.x(), b.y())});
  }

  @Test
  void theLengthWithoutFillerIsTheBuffersDifference() {
    for (long seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      Point a = new Point(random.nextDouble() * 100, random.nextDouble() * 100);
      Point b = new Point(random.nextDouble() * 100, random.nextDouble() * 100);
      double by = 0.5 + random.nextDouble() * 5;
      Segment filler =
          new Segment(
              a.towards(b, random.nextDouble()),
              a.towards(b, random.nextDouble()).plus(new Point(random.nextDouble(), 0)));
      List<Edge> edges = List.of(filler);
      double walked =
          Stretches.length(Stretches.of(Path.straight(a, b), p -> !Nearness.isOn(edges, p, by)));
      double overlaid =
          line(a, b).difference(line(filler.start(), filler.end()).buffer(by, 64)).getLength();
      assertThat(walked).as("seed " + seed).isCloseTo(overlaid, within(0.02));
    }
  }
}
