package org.jointwright.layout.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Source;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
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
    assertThat(Slants.count(cut, 50)).isCloseTo(Slants.count(cut, 100) / 2, within(1e-9));
    assertThat(Slants.count(cut, 150)).isEqualTo(Slants.count(cut, 100));
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

  /** A stem under a body with a bowed end. */
  private static Draft bowed() {
    Point centre = new Point(300, 200);
    return Drafts.of(
        List.of(
            new Segment(new Point(0, 0), new Point(120, 0)),
            new Segment(new Point(120, 0), new Point(120, 100)),
            new Segment(new Point(120, 100), new Point(300, 100)),
            new Arc(new Point(300, 100), new Point(300, 300), centre, Math.PI),
            new Segment(new Point(300, 300), new Point(0, 300)),
            new Segment(new Point(0, 300), new Point(0, 0))));
  }

  private static Draft cut(Draft slab, double x1, double y1, double x2, double y2) {
    return slab.cut(Move.between(new Point(x1, y1), new Point(x2, y2), Move.Reach.PIECE))
        .orElseThrow();
  }

  /** In a stem with square sides a slant is as odd as on a slab with square corners only. */
  @Test
  void amongSquareSidesASlantWeighsInFullThoughTheSlabHasABow() {
    Draft stem = cut(bowed(), 0, 100, 120, 100);
    assertThat(Slants.count(stem, LONG)).isZero();
    Draft leaning = cut(stem, 50, 0, 80, 100);
    assertThat(Slants.count(leaning, LONG)).isCloseTo(leaning(SQUARE, 16.7), within(1e-9));
    assertThat(leaning.slanted()).containsExactly(1);
    Draft upright = cut(stem, 60, 0, 60, 100);
    assertThat(Slants.count(upright, LONG)).isZero();
    assertThat(upright.slanted()).isEmpty();
  }

  /** Beside the bow itself a joint may lean. */
  @Test
  void besideABowASteepSlantWeighsNothing() {
    Draft leaning = cut(bowed(), 240, 100, 300, 300);
    assertThat(leaning.slanted()).isEmpty();
    assertThat(Slants.count(leaning, LONG)).isZero();
  }

  /**
   * From the foot of a slanted side to a side across from it a joint is to be square; what slants
   * is behind it. A slanted side that the joint runs beside makes it less odd.
   */
  @Test
  void aSlantedSideBehindTheJointIsNoExcuse() {
    Draft bay = Drafts.of(0, 0, 240, 0, 240, 100, 160, 100, 120, 160, 0, 160);
    Draft leaning = cut(bay, 120, 0, 160, 100);
    assertThat(leaning.slanted()).containsExactly(0);
    Draft slanted = Drafts.of(0, 0, 200, 0, 268, 200, 0, 200);
    assertThat(cut(slanted, 100, 0, 116, 200).slanted()).isEmpty();
  }

  /** What was one line is judged as one when it is cut in two. */
  @Test
  void aLineOfTwoJointsIsJudgedWhole() {
    Draft bay = Drafts.of(0, 0, 240, 0, 240, 100, 160, 100, 120, 160, 0, 160);
    Draft below = cut(cut(bay, 0, 50, 240, 50), 120, 0, 140, 50);
    assertThat(cut(below, 140, 50, 160, 100).slanted()).containsExactlyInAnyOrder(1, 2);
  }

  /** Alike from two corners of an opening they look meant; each its own way, they do not. */
  @Test
  void onlyJointsThatSplayAlikeFromAnOpeningAreFree() {
    Draft one = cut(Drafts.pierced(300, 300, 140, 140, 20, 20), 140, 140, 100, 0);
    assertThat(Slants.count(cut(one, 160, 140, 200, 0), LONG)).isZero();
    assertThat(Slants.count(cut(one, 160, 140, 190, 0), LONG))
        .isCloseTo(2 * leaning(SQUARE, 10), within(1e-9));
  }

  /** A joint from a post may lean, at a price. */
  @Test
  void fromAPostASlantWeighsLessThanElsewhereButNotNothing() {
    double post = joint(withPost(), 112, 100, 200, 130);
    assertThat(post).isPositive().isLessThan(leaning(SQUARE, 20));
    assertThat(joint(withPost(), 112, 100, 200, 100)).isZero();
  }

  private static Draft withPost() {
    List<Edge> outer = SQUARE.ground().loops().getFirst().edges();
    Point centre = new Point(100, 100);
    Point right = new Point(112, 100);
    Point left = new Point(88, 100);
    List<Edge> post =
        List.of(new Arc(right, left, centre, -Math.PI), new Arc(left, right, centre, -Math.PI));
    List<Edge> edges = new ArrayList<>(outer);
    edges.addAll(post);
    List<Source> sources = new ArrayList<>();
    outer.forEach(e -> sources.add(new Source.OnOutline(sources.size())));
    post.forEach(e -> sources.add(new Source.OnBoxOut("post", sources.size() - outer.size())));
    List<Loop> loops =
        List.of(new Loop(outer, List.of(-1, -2, -3, -4)), new Loop(post, List.of(-5, -6)));
    return Draft.of(Ground.of(new Limits(120, 1.5, 24), sources, edges, loops));
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
