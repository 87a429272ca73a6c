package org.jointwright.layout.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source: rules of S10; that any slant is odd where all corners are square is common practice. */
class SlantsTest {
  private static final Draft SQUARE = Drafts.of(0, 0, 200, 0, 200, 200, 0, 200);

  /** So many feet of joint that a slant weighs in full. */
  private static final double LONG = 100;

  /** What one joint up from (100, 0) weighs that leans so many degrees. */
  private static double leaning(Draft slab, double degrees) {
    return joint(slab, 100, 0, 100 + 200 * Math.tan(Math.toRadians(degrees)), 200);
  }

  private static double joint(Draft slab, double x1, double y1, double x2, double y2) {
    Point from = new Point(x1, y1);
    Draft cut = slab.cut(Move.between(from, new Point(x2, y2), Move.Reach.PIECE)).orElseThrow();
    return Slants.count(cut, LONG);
  }

  @Test
  void aSquareJointWeighsNothing() {
    assertThat(leaning(SQUARE, 0)).isZero();
  }

  /** A sixth of an inch in ten feet: marks of two sides seldom agree better. */
  @Test
  void whatMarksLeaveOffSquareWeighsNothing() {
    assertThat(leaning(SQUARE, 0.14)).isZero();
    assertThat(leaning(SQUARE, 0.16)).isPositive();
  }

  /** No angle is a way round it: just over 15 degrees it weighs what it weighs just under. */
  @ParameterizedTest
  @ValueSource(doubles = {1.1, 5, 14.9, 15, 15.1, 20, 26})
  void whereAllCornersAreSquareEveryLeanWeighsTheSame(double degrees) {
    assertThat(leaning(SQUARE, degrees)).isCloseTo(leaning(SQUARE, 10), within(1e-9));
  }

  /** On a small slab a finisher pays less for a square joint. */
  @Test
  void withFewFeetOfJointASlantWeighsInProportion() {
    Draft cut =
        SQUARE
            .cut(Move.between(new Point(100, 0), new Point(150, 200), Move.Reach.PIECE))
            .orElseThrow();
    assertThat(Slants.count(cut, 30)).isCloseTo(Slants.count(cut, 60) / 2, within(1e-9));
    assertThat(Slants.count(cut, 90)).isEqualTo(Slants.count(cut, 60));
  }

  @Test
  void lessThanADegreeWeighsLess() {
    assertThat(leaning(SQUARE, 0.9)).isPositive().isLessThan(leaning(SQUARE, 1.1));
  }

  /** From corner to corner a diagonal is meant; from the middle of a side it is a slant. */
  @Test
  void aDiagonalFromACornerIsNoSlant() {
    assertThat(joint(SQUARE, 0, 0, 200, 200)).isZero();
    assertThat(joint(SQUARE, 0, 0, 200, 190)).isZero();
    assertThat(joint(SQUARE, 0, 0, 200, 170)).isPositive();
    assertThat(joint(SQUARE, 100, 0, 200, 100)).isPositive();
  }

  /** With slanted sides a joint at an angle all its own shows little. */
  @Test
  void onASlabWithSlantedSidesASteepLeanWeighsLess() {
    Draft slanted = Drafts.of(0, 0, 200, 0, 368, 200, 0, 200);
    assertThat(leaning(slanted, 8)).isGreaterThan(leaning(slanted, 16));
    assertThat(leaning(slanted, 16)).isPositive();
  }

  /** A leg along an arc’s radius is square to what it serves. */
  @Test
  void aLegAlongTheRadiusIsNoSlant() {
    Point centre = new Point(100, 100);
    Draft rounded =
        Drafts.of(
            List.of(
                new Segment(new Point(0, 0), new Point(200, 0)),
                new Segment(new Point(200, 0), new Point(200, 100)),
                new Arc(new Point(200, 100), new Point(100, 200), centre, Math.PI / 2),
                new Segment(new Point(100, 200), new Point(0, 200)),
                new Segment(new Point(0, 200), new Point(0, 0))));
    assertThat(joint(rounded, 90, 0, 90, 200)).isZero();
    assertThat(joint(rounded, 0, 0, 100 + 100 * Math.sqrt(0.5), 100 + 100 * Math.sqrt(0.5)))
        .isZero();
  }
}
