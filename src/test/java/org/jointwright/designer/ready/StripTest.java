package org.jointwright.designer.ready;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;

class StripTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  @Test
  void aBendHasItsCornersOnTheHalvingLine() {
    Outline strip =
        Strip.round(Path.through(List.of(p(0, 0), p(100, 0), p(100, 80))), 20).orElseThrow();
    assertThat(strip)
        .isEqualTo(
            Outline.of(
                List.of(p(0, -10), p(110, -10), p(110, 80), p(90, 80), p(90, 10), p(0, 10))));
  }

  @Test
  void everyPointOfItsLongSidesIsHalfTheWidthFromTheMiddle() {
    for (long seed = 1; seed <= 60; seed++) {
      Random random = new Random(seed);
      Path middle = middle(random);
      double width = 24 + random.nextInt(40);
      Ring ring = Strip.round(middle, width).map(Outline::ring).orElseThrow();
      assertThat(ring.signedArea()).as("seed %d", seed).isPositive();
      int n = middle.edges().size();
      for (int i = 0; i < ring.edges().size(); i++) {
        Edge e = ring.edges().get(i);
        if (i != n && i != 2 * n + 1) {
          assertThat(middle.distance(e.at(0.5)))
              .as("seed %d, side %d", seed, i)
              .isCloseTo(width / 2, within(1e-6));
        }
      }
    }
  }

  /** A line of three long edges, some of them bows, with bends of up to 40 degrees. */
  private static Path middle(Random random) {
    Point at = p(0, 0);
    double heading = random.nextDouble() * 2 * Math.PI;
    List<Edge> edges = new java.util.ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double length = 240 + random.nextInt(120);
      Point to = at.plus(p(length, 0).turned(heading));
      double bow = random.nextInt(3) == 0 ? 0 : (random.nextDouble() - 0.5) * length / 4;
      Point via = at.towards(to, 0.5).plus(to.minus(at).unit().left().times(bow));
      edges.add(bow == 0 ? Vertex.at(at).edgeTo(to) : Vertex.arc(at, via).edgeTo(to));
      heading += Math.toRadians(random.nextInt(80) - 40);
      at = to;
    }
    return new Path(edges);
  }

  @Test
  void tooWideForABendThereIsNone() {
    Path bow = Path.of(Vertex.arc(p(0, 0), p(50, 50)).edgeTo(p(100, 0)));
    assertThat(Strip.round(bow, 99)).isPresent();
    assertThat(Strip.round(bow, 101)).isEmpty();
    Path back = Path.through(List.of(p(0, 0), p(200, 0), p(0, 5)));
    assertThat(Strip.round(back, 40)).as("folds back on itself").isEmpty();
    Path step = Path.through(List.of(p(0, 0), p(100, 0), p(100, 10), p(200, 10)));
    assertThat(Strip.round(step, 40)).as("a step shorter than it is wide").isEmpty();
  }
}
