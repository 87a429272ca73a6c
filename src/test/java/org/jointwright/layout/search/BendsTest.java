package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Drafts;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/**
 * Source: ACPA, jointing of irregular slabs (minimum angle, curved returns; read): a joint that
 * would meet a curved edge under 60 degrees turns along the curve's radius.
 */
class BendsTest {
  private static final Bends BENDS = new Bends(new Score(List.of()), 5_000);
  private static final Point CENTRE = new Point(100, 100);

  /** Straight sides of 100 in below a quarter circle of 100 in about (100, 100), and beyond it. */
  private static Draft roundedCorner() {
    Point from = new Point(200, 100);
    Point to = new Point(100, 200);
    List<Edge> edges =
        List.of(
            new Segment(new Point(0, 0), new Point(200, 0)),
            new Segment(new Point(200, 0), from),
            new Arc(from, to, CENTRE, Math.PI / 2),
            new Segment(to, new Point(0, 200)),
            new Segment(new Point(0, 200), new Point(0, 0)));
    return Drafts.of(edges);
  }

  private static Move line(double x1, double y1, double x2, double y2) {
    return Move.between(new Point(x1, y1), new Point(x2, y2), Move.Reach.THROUGH);
  }

  /** An upright line that far from the left, another, and a level one through the middle. */
  private static Draft crossed(double x) {
    return roundedCorner()
        .cutAll(List.of(line(0, 100, 200, 100), line(75, 0, 75, 90), line(x, 0, x, 90)));
  }

  private static double offRadius(Laid leg) {
    Point radius = leg.end(true).minus(CENTRE).unit();
    return Math.toDegrees(Math.asin(Math.abs(radius.cross(leg.path().direction(1)))));
  }

  /** The arc is met at 60 degrees where the line stands half a radius off the middle. */
  @Test
  void aLineIsTooFlatBeyondHalfARadiusFromTheMiddle() {
    assertThat(Bends.isFlat(crossed(149))).isFalse();
    assertThat(Bends.isFlat(crossed(151))).isTrue();
  }

  @Test
  void aLineThatMeetsTheArcWellStays() {
    Draft draft = crossed(140);
    assertThat(BENDS.bent(draft)).isEqualTo(draft);
  }

  @Test
  void aFlatLineTurnsWhereItCrossesAnotherAndMeetsTheArcSquarer() {
    Draft bent = BENDS.bent(crossed(155));
    Laid leg = bent.lines().getLast();
    assertThat(leg.follows()).isTrue();
    assertThat(leg.end(false).distance(new Point(155, 100))).isCloseTo(0, within(1e-6));
    assertThat(offRadius(leg)).isLessThan(30);
    assertThat(Bends.isFlat(bent)).isFalse();
  }

  /** Without a crossing a bend would leave an inside corner, so the line stays straight. */
  @Test
  void aFlatLineThatCrossesNoneIsNotTurned() {
    Draft draft = roundedCorner().cutAll(List.of(line(160, 0, 160, 90)));
    assertThat(Bends.isFlat(draft)).isTrue();
    assertThat(BENDS.bent(draft)).isEqualTo(draft);
  }

  /** Straight edges are another matter: what meets them slanted is no business of a dog-leg. */
  @Test
  void aSlantedEndOnAStraightEdgeIsNotFlat() {
    Draft slanted =
        Drafts.of(0, 0, 200, 0, 200, 200, 0, 200)
            .cutAll(List.of(line(0, 100, 200, 100), line(20, 0, 180, 200)));
    assertThat(Bends.isFlat(slanted)).isFalse();
  }
}
