package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class AttractionTest {
  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                  "drive",
                  Outline.of(
                      List.of(
                          new Point(0, 0),
                          new Point(240, 0),
                          new Point(240, 120),
                          new Point(0, 120))))));

  private static Draft draft(Point... placed) {
    return new Draft(List.of(placed).stream().map(Vertex::at).toList(), Optional.empty(), "");
  }

  private static Pencil at(Plan plan, Draft draft, double x, double y) {
    return Attraction.drawing(plan, draft, 0.5).at(new Point(x, y));
  }

  private static List<Guide.Kind> kinds(Pencil pencil) {
    return pencil.guides().stream().map(Guide::kind).toList();
  }

  @Test
  void aCornerDrawsThePencil() {
    Pencil pencil = at(PLAN, Draft.EMPTY, 242, 3);
    assertThat(pencil.at()).isEqualTo(new Point(240, 0));
    assertThat(kinds(pencil)).containsExactly(Guide.Kind.CORNER);
  }

  @Test
  void halfWayAlongASideDrawsThePencil() {
    Pencil pencil = at(PLAN, Draft.EMPTY, 122, 3);
    assertThat(pencil.at()).isEqualTo(new Point(120, 0));
    assertThat(kinds(pencil)).containsExactly(Guide.Kind.HALF_WAY);
  }

  @Test
  void whatLiesFartherThanItsReachDrawsNothing() {
    Pencil pencil = at(PLAN, Draft.EMPTY, 300, 60);
    assertThat(pencil.guides()).isEmpty();
  }

  @Test
  void squareToTheSideBeforeIsFoundAndItsLengthIsTidy() {
    Pencil pencil = at(Plan.EMPTY, draft(new Point(400, 0), new Point(500, 50)), 449.2, 150.6);
    assertThat(kinds(pencil)).contains(Guide.Kind.SQUARE);
    Point side = pencil.at().minus(new Point(500, 50));
    assertThat(Math.abs(side.dot(new Point(2, 1)))).isLessThan(1e-6);
    double steps = side.norm() / 3;
    assertThat(Math.abs(steps - Math.rint(steps))).isLessThan(1e-6);
  }

  @Test
  void squareAndInLineTogetherGiveThePlaceWhereBothStringsMeet() {
    Draft three = draft(new Point(300, 0), new Point(400, 0), new Point(400, 77));
    Pencil pencil = at(Plan.EMPTY, three, 302, 79);
    assertThat(pencil.at().distance(new Point(300, 77))).isLessThan(1e-9);
    assertThat(kinds(pencil)).contains(Guide.Kind.SQUARE, Guide.Kind.IN_LINE);
  }

  @Test
  void theFirstCornerCloses() {
    Pencil pencil =
        at(Plan.EMPTY, draft(new Point(0, 0), new Point(90, 0), new Point(90, 90)), 3, -2);
    assertThat(pencil.closes()).isTrue();
  }

  /** A slab whose long side runs 3 up to 4 across. */
  private static final Plan SLANTED =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                  "walk",
                  Outline.of(
                      List.of(
                          new Point(0, 0),
                          new Point(400, 300),
                          new Point(340, 380),
                          new Point(-60, 80))))));

  @Test
  void theFirstSideIsDrawnSquareToTheSideThatItStartsFromWhicheverWayThatRuns() {
    Draft begun = draft(new Point(80, 60));
    // 100 in square to the side, and 3 in beside that.
    Pencil pencil = at(SLANTED, begun, 80 + 60 + 2.4, 60 - 80 + 1.8);
    assertThat(kinds(pencil)).containsExactly(Guide.Kind.SQUARE);
    assertThat(Math.abs(pencil.at().minus(new Point(80, 60)).dot(new Point(4, 3))))
        .isLessThan(1e-6);
  }

  @Test
  void aSideNearbyDrawsTheEdgeParallelToItself() {
    Draft begun = draft(new Point(24, -32));
    Pencil pencil = at(SLANTED, begun, 24 + 160 + 1, -32 + 120 - 1);
    assertThat(kinds(pencil)).containsExactly(Guide.Kind.PARALLEL);
    assertThat(Math.abs(pencil.at().minus(new Point(24, -32)).cross(new Point(4, 3))))
        .isLessThan(1e-6);
  }

  @Test
  void anEdgeMeetsTheSideAcrossSquare() {
    Draft begun = draft(new Point(224, 43));
    Point foot = new Point(164, 123);
    Pencil pencil = at(SLANTED, begun, foot.x() + 4, foot.y() + 3);
    assertThat(pencil.at().distance(foot)).isLessThan(1e-9);
    assertThat(kinds(pencil)).containsExactly(Guide.Kind.SQUARE, Guide.Kind.ON_SIDE);
  }

  @Test
  void aSideFarAwayDrawsNothing() {
    assertThat(at(SLANTED, draft(new Point(60, -80)), 260, 400).guides()).isEmpty();
  }
}
