package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Drafts;
import org.jointwright.layout.piece.Laid;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class ChalkedTest {
  private static final Score SCORE = new Score(List.of());

  private static Draft disc(double radius) {
    Point right = new Point(radius, 0);
    Point left = new Point(-radius, 0);
    Point middle = new Point(0, 0);
    return Drafts.of(
        List.of(new Arc(right, left, middle, Math.PI), new Arc(left, right, middle, Math.PI)));
  }

  private static Draft chalked(Draft start) {
    Draft found = Chalked.or(start, start, SCORE);
    assertThat(Score.isClean(found)).isTrue();
    return found;
  }

  @Test
  void smallDiscIsQuarteredThroughItsMiddle() {
    assertThat(chalked(disc(108)).lines())
        .hasSize(2)
        .allMatch(l -> l.path().distance(new Point(0, 0)) < 0.01);
  }

  /** Ribs stop at a ring where, farther in, they would stand too close. */
  @Test
  void discOfThreeAndMoreSpacingsHasFewerRibsFartherIn() {
    for (double spacings : new double[] {3, 3.2, 3.5, 3.8}) {
      double radius = 120 * spacings;
      List<Edge> ribs =
          chalked(disc(radius)).lines().stream()
              .map(Laid::path)
              .filter(e -> e instanceof Segment)
              .toList();
      assertThat(crossing(ribs, 0.97 * radius))
          .as("ribs at the rim of a disc of %s spacings", spacings)
          .isGreaterThan(crossing(ribs, 0.4 * radius));
    }
  }

  /** How often lines cross a circle about the middle. */
  private static int crossing(List<Edge> lines, double radius) {
    Point middle = new Point(0, 0);
    return lines.stream()
        .mapToInt(
            e ->
                (int)
                    List.of(e.start(), e.end()).stream()
                        .filter(p -> p.distance(middle) > radius)
                        .filter(p -> e.distance(middle) < radius)
                        .count())
        .sum();
  }

  @Test
  void discOfMoreThanTwoSpacingsHasACoreRing() {
    List<Edge> paths = chalked(disc(288)).lines().stream().map(Laid::path).toList();
    assertThat(paths)
        .filteredOn(e -> e instanceof Arc)
        .isNotEmpty()
        .allMatch(e -> e instanceof Arc a && a.centre().norm() < 0.01);
  }

  private static Edge arc(Point centre, double radius, double from, double to) {
    Point a = centre.plus(new Point(radius, 0).turned(from));
    Point b = centre.plus(new Point(radius, 0).turned(to));
    return new Arc(a, b, centre, to - from);
  }

  /** A quarter band 11 ft wide: wider than a panel may be, so a line runs along it. */
  @Test
  void lineAlongABandIsConcentricAndRibsAreRadial() {
    Point middle = new Point(0, 0);
    Edge outer = arc(middle, 432, 0, Math.PI / 2);
    Edge inner = arc(middle, 300, Math.PI / 2, 0);
    Draft start =
        Drafts.of(
            List.of(
                new Segment(inner.end(), outer.start()),
                outer,
                new Segment(outer.end(), inner.start()),
                inner));
    for (Laid line : chalked(start).lines()) {
      if (line.path() instanceof Arc a) {
        assertThat(a.centre().norm()).isCloseTo(0, within(0.01));
      } else {
        Point u = line.path().direction(0);
        assertThat(u.cross(line.path().at(0.5).unit())).isCloseTo(0, within(1e-3));
      }
    }
  }

  @Test
  void whatIsClearlyCheaperStands() {
    Draft start = disc(108);
    Draft chalked = chalked(start);
    assertThat(Chalked.or(chalked, start, SCORE).lines()).hasSize(2);
    Draft small = disc(40);
    assertThat(Chalked.or(small, small, SCORE)).isSameAs(small);
  }
}
