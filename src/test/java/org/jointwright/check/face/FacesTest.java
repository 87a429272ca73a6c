package org.jointwright.check.face;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Side;
import org.jointwright.joint.Source;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class FacesTest {
  @Test
  void hairsBetweenLinesAreLeftOut() {
    assertThat(faces(box("thin", 0, 0, 100, 0.05))).isEmpty();
    assertThat(faces(box("narrow", 0, 0, 100, 0.07))).hasSize(1);
    assertThat(faces(box("small", 0, 0, 0.35, 0.35))).isEmpty();
    assertThat(faces(box("less small", 0, 0, 0.4, 0.4))).hasSize(1);
  }

  @Test
  void fillerWithAPanelOnEitherSideIsNoEdge() {
    Panel left = panel("P1", segments(0, 0, 10, 0, 10, 10, 0, 10), 1);
    Panel right = panel("P2", segments(10, 0, 20, 0, 20, 10, 10, 10), 3);
    assertThat(hard(left, right)).isFalse();
    assertThat(hard(left)).isTrue();
    // A panel that only touches its ends is not beside it.
    assertThat(hard(left, panel("P2", segments(10, 10, 30, 10, 30, 20, 10, 20), 0))).isTrue();
    assertThat(hard(left, panel("P2", segments(10, 10, 20, 5, 20, 10), 0))).isTrue();
  }

  @Test
  void fillerThatAPanelLeavesAGapToIsAnEdge() {
    Panel left = panel("P1", segments(0, 0, 10, 0, 10, 10, 0, 10), 1);
    List<Edge> bowed = new ArrayList<>(segments(10, 0, 20, 0, 20, 10, 10, 10));
    bowed.set(3, Arc.through(new Point(10, 10), new Point(12, 5), new Point(10, 0)));
    assertThat(hard(left, panel("P2", bowed, 3))).isTrue();
  }

  @Test
  void aHairOnTheOtherSideIsNoPanelThere() {
    Panel left = panel("P1", segments(0, 0, 10, 0, 10, 10, 0, 10), 1);
    assertThat(hard(left, panel("P2", segments(10, 0, 10.03, 0, 10.03, 10, 10, 10), 3))).isTrue();
  }

  @Test
  void aJointIsNoEdgeAndOutlineOpeningAndBoxOutAre() {
    List<Side> sides =
        List.of(
            side(0, 0, 10, 0, new Source.OnOutline(0)),
            side(10, 0, 10, 10, new Source.OnOpening(0, 0)),
            side(10, 10, 0, 10, new Source.OnBoxOut("post", 0)),
            side(0, 10, 0, 0, new Source.OnJoint("J1")));
    Face face =
        new Faces(Set.of("F"), Set.of()).of(List.of(new Panel("P1", sides, List.of()))).getFirst();
    assertThat(face.steps()).extracting(Step::hard).containsExactly(true, true, true, false);
    assertThat(face.steps()).extracting(Step::soft).containsOnly(false);
  }

  @Test
  void theSidesOfARoundBoxOutAreSoft() {
    List<Side> sides =
        List.of(
            side(0, 0, 10, 0, new Source.OnBoxOut("round", 0)),
            side(10, 0, 10, 10, new Source.OnBoxOut("square", 0)),
            side(10, 10, 0, 0, new Source.OnOutline(0)));
    Face face =
        new Faces(Set.of(), Set.of("round"))
            .of(List.of(new Panel("P1", sides, List.of())))
            .getFirst();
    assertThat(face.steps()).extracting(Step::soft).containsExactly(true, false, false);
  }

  @Test
  void theRimOfAHoleIsALoopOfTheFace() {
    List<Side> rim =
        List.of(
            side(4, 4, 4, 6, new Source.OnOpening(0, 0)),
            side(4, 6, 6, 6, new Source.OnOpening(0, 1)),
            side(6, 6, 4, 4, new Source.OnOpening(0, 2)));
    Panel holed = new Panel("P1", box("P1", 0, 0, 10, 10).outer(), List.of(rim));
    Face face = faces(holed).getFirst();
    assertThat(face.loops()).extracting(Loop::size).containsExactly(4, 3);
    assertThat(face.at().distance(new Point(5, 5))).isGreaterThan(1);
  }

  @Test
  void aPieceOfJointBetweenTwoPanelsIsABorder() {
    Panel left = panel("P1", segments(0, 0, 10, 0, 10, 10, 0, 10), 1);
    Panel right = panel("P2", segments(10, 0, 20, 0, 20, 10, 10, 10), 3);
    assertThat(Border.of(new Faces(Set.of(), Set.of()).of(List.of(left, right))))
        .singleElement()
        .satisfies(
            b -> {
              assertThat(b.joint()).isEqualTo("F");
              assertThat(b.one().id()).isEqualTo("P1");
              assertThat(b.other().id()).isEqualTo("P2");
            });
  }

  @Test
  void piecesThatShareTheirEndsOnlyAreNoBorder() {
    Panel left = panel("P1", segments(0, 0, 10, 0, 10, 10, 0, 10), 1);
    List<Edge> bowed = new ArrayList<>(segments(10, 0, 20, 0, 20, 10, 10, 10));
    bowed.set(3, Arc.through(new Point(10, 10), new Point(12, 5), new Point(10, 0)));
    assertThat(Border.of(new Faces(Set.of(), Set.of()).of(List.of(left, panel("P2", bowed, 3)))))
        .isEmpty();
  }

  /** Whether the side of the first panel that runs along the filler is an edge. */
  private static boolean hard(Panel... panels) {
    return new Faces(Set.of("F"), Set.of())
        .of(List.of(panels))
        .getFirst()
        .steps()
        .toList()
        .get(1)
        .hard();
  }

  private static List<Face> faces(Panel panel) {
    return new Faces(Set.of(), Set.of()).of(List.of(panel));
  }

  private static Panel box(String id, double x0, double y0, double x1, double y1) {
    return panel(id, segments(x0, y0, x1, y0, x1, y1, x0, y1), -1);
  }

  /** A panel of which one side runs along the filler, the others along the outline. */
  private static Panel panel(String id, List<Edge> edges, int filler) {
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      sides.add(
          new Side(edges.get(i), i == filler ? new Source.OnJoint("F") : new Source.OnOutline(i)));
    }
    return new Panel(id, sides, List.of());
  }

  private static List<Edge> segments(double... xy) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      int k = (i + 2) % xy.length;
      edges.add(new Segment(new Point(xy[i], xy[i + 1]), new Point(xy[k], xy[k + 1])));
    }
    return edges;
  }

  private static Side side(double x0, double y0, double x1, double y1, Source source) {
    return new Side(new Segment(new Point(x0, y0), new Point(x1, y1)), source);
  }
}
