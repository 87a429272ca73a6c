package org.jointwright.check.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class TurnTest {
  private static final Point CORNER = new Point(20, 0);
  private static final Edge EAST = new Segment(new Point(0, 0), CORNER);

  @Test
  void aTurnToTheLeftIsPositive() {
    assertThat(turned(90)).isCloseTo(90, within(1e-9));
    assertThat(turned(-90)).isCloseTo(-90, within(1e-9));
    assertThat(turned(0)).isCloseTo(0, within(1e-9));
    assertThat(turned(165)).isCloseTo(165, within(1e-9));
    assertThat(turned(-165)).isCloseTo(-165, within(1e-9));
  }

  @Test
  void straightPiecesThatNearlyTurnBackKeepTheirSign() {
    assertThat(turned(175)).isCloseTo(175, within(1e-9));
    assertThat(turned(-175)).isCloseTo(-175, within(1e-9));
  }

  @Test
  void aCuspIsAHalfTurnToTheSideWhereThePanelIsNarrow() {
    // An arc that leaves the line backwards: above it, or below it.
    assertThat(Turn.degrees(EAST, Round.arc(CORNER, 10, 180, -90))).isEqualTo(180);
    assertThat(Turn.degrees(EAST, Round.arc(CORNER, 10, 180, 90))).isEqualTo(-180);
  }

  @Test
  void aCuspIsTheSameWhenTheArcComesFirst() {
    Edge west = new Segment(CORNER, new Point(0, 0));
    for (double radius : new double[] {1, 3, 7, 10, 13, 17}) {
      for (double sweep : new double[] {60, 90, 150, 200}) {
        Edge above = Round.arc(CORNER, radius, 180, -sweep).reversed();
        Edge below = Round.arc(CORNER, radius, 180, sweep).reversed();
        assertThat(Turn.degrees(above, west)).isEqualTo(-180);
        assertThat(Turn.degrees(below, west)).isEqualTo(180);
      }
    }
  }

  @Test
  void shortArcsCuspAsLongOnesDo() {
    Edge west = new Segment(CORNER, new Point(0, 0));
    assertThat(Turn.degrees(EAST, Round.arc(CORNER, 0.1, 180, -90))).isEqualTo(180);
    assertThat(Turn.degrees(EAST, Round.arc(CORNER, 0.1, 180, 90))).isEqualTo(-180);
    assertThat(Turn.degrees(Round.arc(CORNER, 0.1, 180, -90).reversed(), west)).isEqualTo(-180);
  }

  @Test
  void aTurnByAHairTooFarIsWhatItIsALittleWayOff() {
    // It leaves five degrees below the line and bends up across it at once.
    assertThat(Turn.degrees(EAST, Round.arc(CORNER, 1, 185, -90))).isEqualTo(180);
    assertThat(Turn.degrees(EAST, Round.arc(CORNER, 100, 185, -20))).isCloseTo(-175, within(1e-9));
    // Above the line and down across it: the panel is wide there.
    assertThat(Turn.degrees(EAST, Round.arc(CORNER, 1, 175, 90))).isCloseTo(175, within(1e-9));
  }

  private static double turned(double degrees) {
    Point on = CORNER.plus(new Point(30, 0).turned(Math.toRadians(degrees)));
    return Turn.degrees(EAST, new Segment(CORNER, on));
  }
}
