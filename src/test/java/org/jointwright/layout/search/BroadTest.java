package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Drafts;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Large slabs, panels at most 10 ft long: 100 squares and more. */
class BroadTest {
  private static final Score SCORE = new Score(List.of());

  /** A hundred squares of 10 ft. */
  private static final Draft PLAIN = Drafts.of(0, 0, 1200, 0, 1200, 1200, 0, 1200);

  /** 150 x 100 ft with an opening of 20 x 14 ft whose corners stand on no line of an even grid. */
  private static final Draft PIERCED = Drafts.pierced(1800, 1200, 636, 504, 240, 168);

  @Test
  void onlyWhatIsLargeAndNotCutYetIsLaidSo() {
    assertThat(Broad.isBroad(PLAIN)).isTrue();
    assertThat(Broad.isBroad(Drafts.of(0, 0, 1060, 0, 1060, 1080, 0, 1080))).isFalse();
    assertThat(Broad.isWorthIt(Drafts.of(0, 0, 1060, 0, 1060, 1080, 0, 1080))).isTrue();
    assertThat(Broad.isWorthIt(Drafts.of(0, 0, 710, 0, 710, 720, 0, 720))).isFalse();
    assertThat(Broad.isBroad(Drafts.of(0, 0, 1080, 0, 1080, 1080, 0, 1080))).isTrue();
    assertThat(Broad.isBroad(PLAIN.cutAll(Broad.best(PLAIN, SCORE).moves()))).isFalse();
  }

  @Test
  void aPlainSlabIsAnEvenGridOfTheFewestLines() {
    Draft laid = Broad.best(PLAIN, SCORE);
    assertThat(Score.isClean(laid)).isTrue();
    assertThat(laid.pieces()).hasSize(100);
    assertThat(laid.lines()).hasSize(18);
    assertThat(laid.tally().cv()).isZero();
  }

  @Test
  void roundAnOpeningPanelsAreWholeAndTheAreaIsKept() {
    Draft laid = Broad.best(PIERCED, SCORE);
    assertThat(Score.isClean(laid)).isTrue();
    double area = laid.pieces().stream().mapToDouble(Piece::area).sum();
    assertThat(area).isCloseTo(1800 * 1200 - 240 * 168, within(1e-3));
    for (Point corner :
        List.of(
            new Point(636, 504), new Point(876, 504), new Point(876, 672), new Point(636, 672))) {
      assertThat(laid.lines()).anyMatch(l -> l.path().distance(corner) < 0.1);
    }
  }

  /** No line right across may cost so much as one on each side of the opening, both ways. */
  @Test
  void itCostsNoMoreThanLinesRightThroughAllCorners() {
    Rows rows = new Rows(PIERCED.pieces().getFirst(), new Point(1, 0), List.of());
    Rows columns = new Rows(PIERCED.pieces().getFirst(), new Point(0, 1), List.of());
    Grid through =
        new Grid(
            PIERCED.pieces().getFirst(),
            new Point(1, 0),
            rows,
            rows.divided(rows.anchorPlaces(), 0),
            columns,
            columns.divided(columns.anchorPlaces(), 0));
    Draft all = PIERCED.cutAll(through.moves());
    assertThat(Score.isClean(all)).isTrue();
    assertThat(SCORE.of(Broad.best(PIERCED, SCORE))).isLessThanOrEqualTo(SCORE.of(all) + 1e-6);
  }

  /** Ten times as many panels, ten openings: bays do not know how large the rest is. */
  @Test
  void whatIsLaidRoundAnOpeningIsCutNowhereElse() {
    Draft large = Drafts.pierced(4800, 3600, 1236, 1104, 240, 168);
    Draft laid = Broad.best(large, SCORE);
    assertThat(Score.isClean(laid)).isTrue();
    for (Laid l : laid.lines()) {
      boolean whole = l.startTag() < 0 && l.endTag() < 0;
      boolean near = l.path().distance(new Point(1356, 1188)) < 600;
      assertThat(whole || near).as("%s", l.path()).isTrue();
    }
  }

  @Test
  void sameSlabSameLayout() {
    assertThat(Broad.best(PIERCED, SCORE).moves()).isEqualTo(Broad.best(PIERCED, SCORE).moves());
  }
}
