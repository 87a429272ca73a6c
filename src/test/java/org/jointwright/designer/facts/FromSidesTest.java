package org.jointwright.designer.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.shaping.SideOff;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** A thing is placed by the tape from any side, and its rows stay where they are. */
class FromSidesTest {
  /** 20 ft along the street by 30 ft. */
  private static final Slab DRIVE =
      Slab.of("drive", Outline.of(List.of(at(0, 0), at(20, 0), at(20, 30), at(0, 30))));

  private final List<Point> moves = new ArrayList<>();

  private static Point at(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private List<Row.Typed> rows(Slab slab, Point... of) {
    FromSides from =
        new FromSides(
            Plan.EMPTY.withSlabs(List.of(slab)), slab, Words.english(UnitSystem.FEET_INCHES));
    return from
        .rows(
            "post",
            "window.from.middle",
            List.of(of),
            (d, by) -> {
              moves.add(by);
              return d;
            })
        .stream()
        .map(Row.Typed.class::cast)
        .toList();
  }

  /** What was typed stays where another size is typed, whichever side it was typed from. */
  @Test
  void anotherSizeKeepsWhatWasTypedOrElseTheNearestSides() {
    List<Point> was = corners(4, 6, 24);
    for (int k = 0; k < 16; k++) {
      int first = k / 4;
      int last = k % 4;
      if (first % 2 == last % 2) {
        continue;
      }
      List<Point> is = corners(4, 6, 36);
      Point by = FromSides.held(DRIVE, SideOff.eachWay(DRIVE, was), is, List.of(first, last));
      for (int side : List.of(first, last)) {
        assertThat(away(side, is, by))
            .as("%s", side)
            .isCloseTo(away(side, was, new Point(0, 0)), within(1e-9));
      }
    }
    Point nearest =
        FromSides.held(DRIVE, SideOff.eachWay(DRIVE, was), corners(4, 6, 36), List.of());
    assertThat(nearest).isEqualTo(new Point(0, 0));
  }

  private static List<Point> corners(double x, double y, double size) {
    Point at = at(x, y);
    return List.of(
        at,
        at.plus(new Point(size, 0)),
        at.plus(new Point(size, size)),
        at.plus(new Point(0, size)));
  }

  private static double away(int side, List<Point> of, Point by) {
    Edge e = DRIVE.outline().ring().edges().get(side);
    return of.stream()
        .mapToDouble(p -> p.plus(by).minus(e.start()).dot(e.direction(0).left()))
        .min()
        .orElseThrow();
  }

  @Test
  void aPostIsMeasuredFromAllFourSidesInTheOrderOfTheOutline() {
    for (Point post : List.of(at(3, 21), at(17, 4), at(10, 15))) {
      assertThat(rows(DRIVE, post))
          .extracting(Row.Typed::label)
          .containsExactly(
              "Middle from A–B", "Middle from B–C", "Middle from C–D", "Middle from D–A");
    }
    assertThat(rows(DRIVE, at(3, 21)))
        .extracting(Row.Typed::value)
        .containsExactly("21′-0″", "17′-0″", "9′-0″", "3′-0″");
  }

  @Test
  void anOpeningIsMeasuredToItsNearEdge() {
    Point[] corners = {at(5, 20), at(9, 20), at(9, 24), at(5, 24)};
    assertThat(rows(DRIVE, corners))
        .extracting(Row.Typed::value)
        .containsExactly("20′-0″", "11′-0″", "6′-0″", "5′-0″");
  }

  @Test
  void whatIsTypedFromTheFarSideMovesItThatWay() {
    rows(DRIVE, at(3, 21)).get(2).change().apply("10'6").apply(Desk.blank());
    assertThat(moves).hasSize(1);
    assertThat(moves.getFirst().x()).isCloseTo(0, within(1e-9));
    assertThat(moves.getFirst().y()).isCloseTo(-18, within(1e-9));
  }

  @Test
  void aRowKeepsItsNameWhereAnotherSideComesAcross() {
    Slab ell =
        Slab.of(
            "ell",
            Outline.of(List.of(at(0, 0), at(20, 0), at(20, 10), at(8, 10), at(8, 30), at(0, 30))));
    assertThat(rows(ell, at(4, 15)))
        .extracting(Row.Typed::id)
        .contains("post-from-0", "post-from-4");
    assertThat(rows(ell, at(14, 5)))
        .extracting(Row.Typed::id)
        .contains("post-from-0", "post-from-1");
    assertThat(rows(ell, at(4, 15)).getLast().id()).isEqualTo(rows(ell, at(4, 5)).getLast().id());
  }

  @Test
  void whatWouldLeaveTheSlabIsRefused() {
    Row.Typed fromTop = rows(DRIVE, at(3, 21)).get(2);
    assertThatThrownBy(() -> fromTop.change().apply("31'").apply(Desk.blank()))
        .isInstanceOf(BadFigure.class);
    assertThat(moves).isEmpty();
  }

  @Test
  void aSideThatIsNotSquareAcrossIsLeftOut() {
    Slab ell =
        Slab.of(
            "ell",
            Outline.of(List.of(at(0, 0), at(20, 0), at(20, 10), at(8, 10), at(8, 30), at(0, 30))));
    // In the upper arm: the street far below, the arm's two sides, its top.
    assertThat(rows(ell, at(4, 25)))
        .extracting(Row.Typed::label)
        .containsExactly(
            "Middle from A–B", "Middle from D–E", "Middle from E–F", "Middle from F–A");
  }

  /** The street of this drive runs a foot off square to its other sides. */
  private static final Slab SKEW =
      Slab.of("skew", Outline.of(List.of(at(0, 0), at(20, -1), at(20, 30), at(0, 30))));

  @Test
  void bothFiguresOfAPostThatWasSetDownStayWhereTheSidesAreNotSquare() {
    Edge street = SKEW.outline().ring().edges().getFirst();
    Point in = street.direction(0).left();
    // Five feet from the street, as typed; from the left side it was led.
    Point start = street.start().plus(street.direction(0).times(50.3)).plus(in.times(60));
    rows(SKEW, start).get(3).change().apply("6'").apply(Desk.blank());
    Point now = start.plus(moves.getFirst());
    assertThat(now.minus(street.start()).dot(in)).isCloseTo(60, within(1e-9));
    assertThat(now.x()).isCloseTo(72, within(1e-9));
  }

  @Test
  void aPostThatWasOnlyLedGoesStraightOffTheSide() {
    rows(SKEW, new Point(50.3, 61.7)).get(3).change().apply("6'").apply(Desk.blank());
    assertThat(moves.getFirst().y()).isCloseTo(0, within(1e-9));
  }
}
