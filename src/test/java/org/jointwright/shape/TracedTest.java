package org.jointwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TracedTest {
  private static List<Point> round(
      double radius, double fromDegrees, double toDegrees, int chords) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= chords; i++) {
      double a = Math.toRadians(fromDegrees + (toDegrees - fromDegrees) * i / chords);
      points.add(new Point(500 + radius * Math.cos(a), 300 + radius * Math.sin(a)));
    }
    return points;
  }

  @Test
  void chordsThatTraceAnArcAreThatArc() {
    Path traced = Traced.path(Path.through(round(120, 10, 100, 30)));
    assertThat(traced.edges()).hasSize(1);
    assertThat(traced.edges().getFirst()).isInstanceOf(Arc.class);
    assertThat(((Arc) traced.edges().getFirst()).radius()).isCloseTo(120, within(1e-6));
  }

  @Test
  void pointsOnALineAreThatLine() {
    Path bent = Path.through(List.of(new Point(0, 0), new Point(60, 0.05), new Point(120, 0)));
    assertThat(Traced.path(bent).edges())
        .containsExactly(new Segment(new Point(0, 0), new Point(120, 0)));
  }

  @Test
  void aBentPathStaysBent() {
    Path bent = Path.through(List.of(new Point(0, 0), new Point(60, 0), new Point(120, 30)));
    assertThat(Traced.path(bent)).isEqualTo(bent);
  }

  @Test
  void aCircleInChordsIsTwoArcs() {
    List<Point> points = round(12, 0, 360, 32);
    points.removeLast();
    Ring ring = Traced.ring(Ring.of(points));
    assertThat(ring.edges()).hasSize(2).allMatch(e -> e instanceof Arc);
    assertThat(ring.area()).isCloseTo(Math.PI * 144, within(0.5));
  }

  @Test
  void anOctagonStaysAnOctagon() {
    List<Point> points = round(24, 0, 360, 8);
    points.removeLast();
    assertThat(Traced.ring(Ring.of(points)).edges()).hasSize(8).allMatch(e -> e instanceof Segment);
  }

  @Test
  void roundEndsOfAStraightSidedRingAreArcs() {
    List<Point> points = new ArrayList<>(round(10, -90, 90, 18));
    points.add(new Point(460, 310));
    points.add(new Point(460, 290));
    Ring ring = Traced.ring(Ring.of(points));
    assertThat(ring.edges()).hasSize(4);
    assertThat(ring.edges().stream().filter(e -> e instanceof Arc)).hasSize(1);
  }
}
