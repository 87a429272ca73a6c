package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/** Bays, their rows along x: rows stand at y, columns at the x to the other side. */
class BayTest {
  private static final Point ALONG = new Point(1, 0);
  private static final Bay WHOLE = new Bay(0, 1000, -1000, 0);
  private static final List<Double> ROWS = List.of(100.0, 200.0, 300.0, 400.0);
  private static final List<Double> COLUMNS = List.of(-400.0, -300.0, -200.0, -100.0);

  @Test
  void itHoldsTheEdgesItIsRound() {
    Edge side = new Segment(new Point(120, 40), new Point(220, 90));
    assertThat(Bay.round(List.of(side), ALONG)).isEqualTo(new Bay(40, 90, -220, -120));
  }

  @Test
  void itReachesOnToTheNextLines() {
    Bay bay = new Bay(150, 250, -250, -150).reaching(ROWS, COLUMNS, 0, WHOLE);
    assertThat(bay).isEqualTo(new Bay(100, 300, -300, -100));
  }

  @Test
  void aLineAtItsSideIsItsSideAndOneTooNearIsNot() {
    Bay bay = new Bay(200, 305, -380, -201.5).reaching(ROWS, COLUMNS, 24, WHOLE);
    // The row at 200 is its side; that at 300 runs through it, so that 400 is next.
    assertThat(bay.low()).isEqualTo(200);
    assertThat(bay.high()).isEqualTo(400);
    // 20 in to the column at 400 are too few; so is 1 1/2 in to that at 200.
    assertThat(bay.left()).isEqualTo(-1000);
    assertThat(bay.right()).isEqualTo(-100);
  }

  @Test
  void whereNoLineIsLeftItReachesToTheEnd() {
    Bay bay = new Bay(50, 450, -450, -50).reaching(ROWS, COLUMNS, 24, WHOLE);
    assertThat(bay).isEqualTo(WHOLE);
  }

  @Test
  void linesAlongItsSidesDoNotRunThroughIt() {
    Bay bay = new Bay(100, 300, -300, -100);
    assertThat(bay.takesRow(200)).isTrue();
    assertThat(bay.takesRow(100.5)).isFalse();
    assertThat(bay.takesRow(300)).isFalse();
    assertThat(bay.takesColumn(-200)).isTrue();
    assertThat(bay.takesColumn(-100)).isFalse();
  }

  @Test
  void baysThatOverlapAreOneAndBaysThatTouchAreTwo() {
    Bay one = new Bay(0, 100, 0, 100);
    Bay touching = new Bay(0, 100, 100, 200);
    Bay over = new Bay(50, 150, 50, 150);
    assertThat(Bay.apart(List.of(one, touching))).containsExactly(one, touching);
    assertThat(Bay.apart(List.of(one, touching, over))).containsExactly(new Bay(0, 150, 0, 200));
  }
}
