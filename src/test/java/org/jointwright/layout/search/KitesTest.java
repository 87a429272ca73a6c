package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.layout.piece.Bent;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Drafts;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/** On a triangle with 60 degrees at each corner, and on slabs with none sharp enough. */
class KitesTest {
  private static final double SIDE = 300;
  private static final Draft TRIANGLE = Drafts.of(0, 0, SIDE, 0, SIDE / 2, SIDE * Math.sqrt(3) / 2);
  private static final Draft SQUARE = Drafts.of(0, 0, 200, 0, 200, 200, 0, 200);

  private static List<Pattern> kites(Draft draft) {
    return Corners.kites(draft.pieces().getFirst(), List.of());
  }

  @Test
  void noCornerIsSharpNoKite() {
    assertThat(kites(SQUARE)).isEmpty();
    // Hardly out of square, a grid fits; where sides slant, square corners get kites too.
    assertThat(kites(leaning(89))).isEmpty();
    assertThat(kites(leaning(87))).isNotEmpty();
    // The blunt corners of a skew slab get none: 93 degrees are square, 97 are not.
    assertThat(corners(kites(leaning(87)))).isEqualTo(4);
    assertThat(corners(kites(leaning(83)))).isEqualTo(2);
  }

  /** At how many corners the kites are: their bends lie about each. */
  private static long corners(List<Pattern> kites) {
    return kites.stream()
        .map(p -> ((Bent) p.moves().getFirst().carrier()).bend())
        // Those of the long legs reach past the middle.
        .filter(b -> Math.abs(b.y() - 100) > 30)
        .map(b -> (b.x() > 125 ? "right " : "left ") + (b.y() > 100 ? "up" : "down"))
        .distinct()
        .count();
  }

  private static Draft leaning(double degrees) {
    double lean = 200 / Math.tan(Math.toRadians(degrees));
    return Drafts.of(0, 0, 250, 0, 250 + lean, 200, lean, 200);
  }

  @Test
  void theFirstTwoArmsAreSquareToTheSidesAndMeetOnTheBisector() {
    assertThat(kites(TRIANGLE)).isNotEmpty();
    for (Pattern p : kites(TRIANGLE)) {
      Bent bent = (Bent) p.moves().getFirst().carrier();
      Draft cut = TRIANGLE.cut(p.moves().getFirst()).orElseThrow();
      assertThat(cut.lines()).hasSize(2);
      for (Laid arm : cut.lines()) {
        boolean last = arm.end(false).distance(bent.bend()) < 0.01;
        Edge side = TRIANGLE.ground().edge(arm.tag(last));
        assertThat(arm.path().direction(0).dot(side.direction(0))).isCloseTo(0, within(1e-6));
      }
      double one = cut.lines().getFirst().path().length();
      assertThat(cut.lines().getLast().path().length()).isCloseTo(one, within(0.01));
    }
  }

  @Test
  void aThirdArmGoesOnFromTheBendAndMakesAY() {
    for (Pattern p : kites(TRIANGLE)) {
      Draft cut = TRIANGLE.cutAll(p.moves());
      assertThat(cut.lines()).hasSize(3);
      assertThat(cut.pieces()).hasSize(3);
      assertThat(cut.tally().ys() + cut.tally().tees().size()).isEqualTo(1);
    }
  }

  /** A kite keeps the corner and has four sides, so that M4 and M2 hold where a tip breaks them. */
  @Test
  void theKiteHoldsTheCorner() {
    Pattern p = kites(TRIANGLE).getFirst();
    Draft cut = TRIANGLE.cut(p.moves().getFirst()).orElseThrow();
    Bent bent = (Bent) p.moves().getFirst().carrier();
    Piece kite =
        cut.pieces().stream().min((a, b) -> Double.compare(a.area(), b.area())).orElseThrow();
    assertThat(kite.outer().size()).isEqualTo(4);
    assertThat(kite.outer().distance(nearest(bent.bend()))).isLessThan(0.01);
  }

  private static Point nearest(Point p) {
    return TRIANGLE.ground().loops().getFirst().edges().stream()
        .map(Edge::start)
        .min((a, b) -> Double.compare(a.distance(p), b.distance(p)))
        .orElseThrow();
  }

  @Test
  void aThirdArmMayMeetAnOpenTee() {
    Piece piece = TRIANGLE.pieces().getFirst();
    Point tee = new Point(SIDE * 0.7, 0);
    List<Pattern> to = Corners.kites(piece, List.of(tee));
    assertThat(to.size()).isGreaterThan(kites(TRIANGLE).size());
    assertThat(to).anyMatch(p -> p.moves().getLast().carrier().distance(tee) < 0.01);
  }

  @Test
  void aCutAcrossASharpCornerIsSquareToItsBisector() {
    List<Pattern> cuts = Corners.acrossSharp(TRIANGLE.pieces().getFirst());
    assertThat(cuts).isNotEmpty();
    assertThat(Corners.acrossSharp(SQUARE.pieces().getFirst())).isEmpty();
    for (Pattern p : cuts) {
      Draft cut = TRIANGLE.cutAll(p.moves());
      assertThat(cut.lines())
          .singleElement()
          .satisfies(l -> assertThat(l.path()).isInstanceOf(Segment.class));
      Segment s = (Segment) cut.lines().getFirst().path();
      // Every corner is 60 degrees: its cut is parallel to the side across from it.
      assertThat(TRIANGLE.ground().loops().getFirst().edges())
          .anyMatch(e -> Math.abs(e.direction(0).cross(s.direction(0))) < 1e-6);
    }
  }
}
