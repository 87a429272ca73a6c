package org.jointwright.check.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class LoopTest {
  /** A square with a corner cut off by less than a tolerance. */
  private static final Loop CUT = Round.through(0, 0, 100, 0, 100, 99.7, 99.7, 100, 0, 100);

  @Test
  void cornersNearerThanHalfAnInchAreOneWhereverTheRoundBegins() {
    for (int first = 0; first < CUT.size(); first++) {
      List<Knot> knots = Round.begunAt(CUT, first).knots();
      assertThat(knots).hasSize(4);
      assertThat(knots).allMatch(k -> Math.abs(k.interior() - 90) < 1e-9);
      assertThat(knots)
          .filteredOn(k -> k.count() == 2)
          .extracting(Knot::at)
          .containsExactly(new Point(100, 99.7));
    }
  }

  @Test
  void cornersFartherApartAreTwo() {
    assertThat(Round.through(0, 0, 100, 0, 100, 99.6, 99.6, 100, 0, 100).knots()).hasSize(5);
  }

  @Test
  void aTightFilletIsTheInsideCornerItRoundsOff() {
    for (int first = 0; first < 7; first++) {
      Loop loop = Round.begunAt(fillet(5), first);
      assertThat(loop.knots()).hasSize(6);
      assertThat(loop.knots())
          .filteredOn(k -> k.count() == 2)
          .singleElement()
          .satisfies(
              k -> {
                assertThat(k.at()).isEqualTo(new Point(55, 50));
                assertThat(k.interior()).isCloseTo(270, within(1e-9));
                assertThat(loop.isWhole(k)).isTrue();
              });
    }
  }

  @Test
  void aWiderOneHasNoCorners() {
    assertThat(fillet(5.6).knots()).hasSize(7);
    assertThat(fillet(5.6).knots()).noneMatch(k -> k.interior() > 180 + 1e-6);
  }

  @Test
  void aRoundedOffCornerThatStandsOutIsNoCorner() {
    Loop out = Round.from(0, 0).to(95, 0).left(5, 0, 90).to(100, 100).to(0, 100).to(0, 0).loop();
    assertThat(out.knots()).hasSize(5);
  }

  /** An L with its inside corner rounded off. */
  private static Loop fillet(double r) {
    return Round.from(0, 0)
        .to(100, 0)
        .to(100, 50)
        .to(50 + r, 50)
        .right(r, 180, 90)
        .to(50, 100)
        .to(0, 100)
        .to(0, 0)
        .loop();
  }

  @Test
  void aCornerIsWholeWhereNoJointMeetsIt() {
    Loop loop = Round.from(0, 0).to(100, 0).to(100, 50).to(0, 50).joint(0, 0).loop();
    List<Knot> knots = loop.knots();
    assertThat(knots).extracting(Knot::at).startsWith(new Point(0, 0), new Point(100, 0));
    assertThat(knots).extracting(loop::isWhole).containsExactly(false, true, true, false);
    assertThat(knots).extracting(loop::isOnOutline).containsExactly(false, true, true, false);
  }

  @Test
  void aCornerOfABoxOutIsWholeButNotTheOutlines() {
    Loop loop =
        Round.from(0, 0).to(100, 0).to(100, 50).to(0, 50).boxOut("post", false, 0, 0).loop();
    assertThat(loop.knots()).allMatch(loop::isWhole);
    assertThat(loop.knots())
        .extracting(loop::isOnOutline)
        .containsExactly(false, true, true, false);
  }

  @Test
  void aRoundOfShortSidesOnlyIsOneCorner() {
    Loop tiny = Round.through(0, 0, 0.2, 0, 0.2, 0.2, 0, 0.2);
    assertThat(tiny.knots().stream().mapToInt(Knot::count).sum()).isEqualTo(4);
  }
}
