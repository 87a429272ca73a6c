package org.jointwright.check.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.face.TightTurns.Tight;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class TightTurnsTest {
  @Test
  void anArcThatTurnsInIsTightUpToFiveFeet() {
    Tight tight = only(el(24).loop());
    assertThat(tight.degrees()).isCloseTo(90, within(1e-9));
    assertThat(tight.radius()).isCloseTo(24, within(1e-9));
    assertThat(
            tight
                .at()
                .distance(
                    new Point(200 + 24 * (1 - Math.sqrt(0.5)), 200 + 24 * (1 - Math.sqrt(0.5)))))
        .isCloseTo(0, within(1e-9));
    assertThat(TightTurns.of(el(59).loop())).hasSize(1);
    assertThat(TightTurns.of(el(60).loop())).isEmpty();
  }

  /** An L of two feet and more with its inside corner on an arc. */
  private static Round el(double r) {
    return Round.from(0, 0)
        .to(400, 0)
        .to(400, 200)
        .to(200 + r, 200)
        .right(r, 180, 90)
        .to(200, 400)
        .to(0, 400)
        .to(0, 0);
  }

  @Test
  void anArcThatStandsOutIsNone() {
    Loop out = Round.from(0, 0).to(76, 0).left(24, 0, 90).to(100, 100).to(0, 100).to(0, 0).loop();
    assertThat(TightTurns.of(out)).isEmpty();
  }

  @Test
  void cornersAreNone() {
    assertThat(TightTurns.of(Round.through(0, 0, 100, 0, 100, 50, 50, 50, 50, 100, 0, 100)))
        .isEmpty();
  }

  @Test
  void aCurveTracedInShortPiecesIsOneStretchWhereverTheRoundBegins() {
    Loop traced = traced(24, 18);
    for (int first = 0; first < traced.size(); first++) {
      Tight tight = only(Round.begunAt(traced, first));
      // Where it leaves the straight sides, by 1.25 degrees each, no radius is to be told.
      assertThat(tight.degrees()).isCloseTo(87.5, within(1e-6));
      assertThat(tight.radius()).isCloseTo(24, within(0.1));
    }
  }

  @Test
  void piecesThatTurnByMoreThanSixDegreesTraceNothing() {
    assertThat(TightTurns.of(traced(24, 10))).isEmpty();
    assertThat(TightTurns.of(traced(70, 18))).isEmpty();
  }

  /** An L with its inside corner in so many chords, the first and last half as long. */
  private static Loop traced(double r, int count) {
    Edge arc = Round.arc(new Point(200 + r, 200), r, 180, -90);
    Round round = Round.from(0, 0).to(400, 0).to(400, 200).to(200 + r, 200);
    for (int i = 1; i <= count; i++) {
      Point p = arc.at((i - 0.5) / count);
      round.to(p.x(), p.y());
    }
    return round.to(200, 200 + r).to(200, 400).to(0, 400).to(0, 0).loop();
  }

  @Test
  void twoCurvesWithAStraightPieceBetweenAreTwo() {
    assertThat(TightTurns.of(twoArcs(12))).hasSize(2);
    assertThat(TightTurns.of(twoArcs(0.6))).hasSize(2);
  }

  @Test
  void aPieceUnderHalfAnInchPartsNoCurve() {
    Tight tight = only(twoArcs(0.4));
    assertThat(tight.degrees()).isCloseTo(90, within(1e-9));
    assertThat(tight.radius()).isCloseTo(24, within(1e-9));
  }

  /** An inside corner of two arcs of 30 and 60 degrees with a straight piece between. */
  private static Loop twoArcs(double between) {
    Point a = Round.arc(new Point(0, 0), 24, 180, -30).end();
    Point b = a.plus(new Point(between, 0).turned(Math.toRadians(150)));
    Point c = b.plus(Round.arc(new Point(0, 0), 30, 150, -60).end());
    double x = 300;
    return Round.from(0, 0)
        .to(400, 0)
        .to(400, 200)
        .to(x, 200)
        .right(24, 180, 30)
        .to(x + b.x(), 200 + b.y())
        .right(30, 150, 60)
        .to(x + c.x(), 400)
        .to(0, 400)
        .to(0, 0)
        .loop();
  }

  @Test
  void aCornerBesideAnArcTracesNoCurve() {
    Point a = Round.arc(new Point(0, 0), 12, 180, -30).end();
    Point b = a.plus(new Point(1, 0).turned(Math.toRadians(145)));
    Point c = b.plus(new Point(1, 0).turned(Math.toRadians(140)));
    Loop mixed =
        Round.from(0, 0)
            .to(400, 0)
            .to(400, 200)
            .to(300, 200)
            .right(12, 180, 30)
            .to(300 + b.x(), 200 + b.y())
            .to(300 + c.x(), 200 + c.y())
            .to(0, 400)
            .to(0, 0)
            .loop();
    assertThat(TightTurns.of(mixed).getFirst().degrees()).isCloseTo(30, within(1e-9));
  }

  @Test
  void itIsShownAtItsLongestTurnWithItsSmallestRadius() {
    Tight last = only(twoArcs(0.4));
    Edge longest =
        twoArcs(0.4).steps().stream()
            .map(Step::edge)
            .filter(e -> Math.abs(e.turn()) > 1)
            .findFirst()
            .orElseThrow();
    assertThat(last.at()).isEqualTo(longest.at(0.5));
    Loop first = el30After60();
    assertThat(only(first).at()).isEqualTo(first.step(3).edge().at(0.5));
    assertThat(only(first).radius()).isCloseTo(20, within(1e-9));
  }

  private static Loop el30After60() {
    Point a = Round.arc(new Point(0, 0), 30, 180, -60).end();
    Point b = a.plus(Round.arc(new Point(0, 0), 20, 120, -30).end());
    return Round.from(0, 0)
        .to(400, 0)
        .to(400, 200)
        .to(300, 200)
        .right(30, 180, 60)
        .right(20, 120, 30)
        .to(300 + b.x(), 400)
        .to(0, 400)
        .to(0, 0)
        .loop();
  }

  @Test
  void aBoxOutThatIsRoundTurnsTightAllTheWay() {
    Tight tight = only(octagon("post", "post", true));
    assertThat(tight.degrees()).isCloseTo(360, within(1e-6));
    double side = 2 * 12 * Math.sin(Math.PI / 8);
    assertThat(tight.radius()).isCloseTo(side / (Math.PI / 4), within(1e-9));
  }

  @Test
  void aBoxOutWithCornersDoesNotAndTwoThatMeetEndEachOther() {
    assertThat(TightTurns.of(octagon("post", "post", false))).isEmpty();
    assertThat(TightTurns.of(octagon("post", "drain", true)))
        .extracting(t -> Math.round(t.degrees()))
        .containsExactly(135L, 135L);
  }

  @Test
  void aPlaceIsSoftBetweenTwoSidesOfOneRoundBoxOut() {
    Loop one = octagon("post", "post", true);
    assertThat(TightTurns.isSoft(one, 0)).isTrue();
    assertThat(TightTurns.isSoft(octagon("post", "post", false), 0)).isFalse();
    Loop two = octagon("post", "drain", true);
    assertThat(TightTurns.isSoft(two, 4)).isFalse();
    assertThat(TightTurns.isSoft(two, 3)).isTrue();
    assertThat(TightTurns.isSoft(Round.begunAt(two, 1), 3)).isFalse();
    Loop mixed =
        Round.from(0, 0).boxOut("post", true, 10, 0).boxOut("post", false, 10, 10).to(0, 0).loop();
    assertThat(TightTurns.isSoft(mixed, 1)).isFalse();
    assertThat(TightTurns.isSoft(Round.begunAt(mixed, 2), 1)).isFalse();
    Loop late =
        Round.from(0, 0)
            .boxOut("post", false, 10, 0)
            .boxOut("post", true, 10, 10)
            .boxOut("post", true, 0, 0)
            .loop();
    assertThat(TightTurns.isSoft(late, 1)).isFalse();
    assertThat(TightTurns.isSoft(late, 2)).isTrue();
    Loop edge = Round.from(0, 0).boxOut("post", true, 10, 0).to(10, 10).to(0, 0).loop();
    assertThat(TightTurns.isSoft(edge, 0)).isFalse();
    assertThat(TightTurns.isSoft(edge, 1)).isFalse();
  }

  /** The rim of a hole, clockwise, half of it of one box-out. */
  private static Loop octagon(String one, String other, boolean soft) {
    Round round = Round.from(12, 0);
    for (int i = 1; i <= 8; i++) {
      double angle = -Math.PI / 4 * i;
      String fixed = i <= 4 ? one : other;
      double x = i == 8 ? 12 : 12 * Math.cos(angle);
      double y = i == 8 ? 0 : 12 * Math.sin(angle);
      round.boxOut(fixed, soft, x, y);
    }
    return round.loop();
  }

  private static Tight only(Loop loop) {
    List<Tight> found = TightTurns.of(loop);
    assertThat(found).hasSize(1);
    return found.getFirst();
  }
}
