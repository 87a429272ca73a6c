package org.jointwright.check.face;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A step aside of an inch is no inside corner; the figure is this program’s own. */
class JogsTest {
  @Test
  void aStepAsideOfAnInchIsAJogAndOneOfTwoIsNot() {
    assertThat(isJog(step(1), 50, 50)).isTrue();
    assertThat(isJog(step(1.5), 50, 50)).isTrue();
    assertThat(isJog(step(1.6), 50, 50)).isFalse();
  }

  @Test
  void aStepTheOtherWayIsAJogToo() {
    Loop in = Round.through(0, 0, 100, 0, 100, 51, 50, 51, 50, 50, 0, 50);
    assertThat(isJog(in, 50, 50)).isTrue();
  }

  @Test
  void aCornerByItselfIsNone() {
    assertThat(isJog(step(20), 100, 0)).isFalse();
    assertThat(isJog(step(20), 50, 50)).isFalse();
  }

  @Test
  void twoInsideCornersSideBySideAreNone() {
    // A notch an inch wide: its two corners turn the same way.
    Loop notch = Round.through(0, 0, 100, 0, 100, 50, 51, 50, 51, 20, 50, 20, 50, 50, 0, 50);
    assertThat(isJog(notch, 51, 20)).isFalse();
    assertThat(isJog(notch, 50, 20)).isFalse();
  }

  @Test
  void whatIsPartEdgeAndPartJointIsNone() {
    for (int joint = 0; joint < 3; joint++) {
      Round round = Round.from(0, 0).to(100, 0).to(100, 50);
      double[][] sides = {{50, 50}, {50, 51}, {0, 51}};
      for (int i = 0; i < sides.length; i++) {
        round =
            i == joint ? round.joint(sides[i][0], sides[i][1]) : round.to(sides[i][0], sides[i][1]);
      }
      assertThat(isJog(round.to(0, 0).loop(), 50, 50)).as("side " + joint).isFalse();
    }
  }

  @Test
  void aStepBetweenJointsIsAJog() {
    Loop joints =
        Round.from(0, 0)
            .to(100, 0)
            .to(100, 50)
            .joint(50, 50)
            .joint(50, 51)
            .joint(0, 51)
            .to(0, 0)
            .loop();
    assertThat(isJog(joints, 50, 50)).isTrue();
  }

  @Test
  void aFewCornersBesideItMayLevelItOutTogether() {
    // The corner that stands out is broken into four places, before it or after it.
    double h = 50.6;
    Loop after =
        Round.through(
            0, 0, 100, 0, 100, 50, 50, 50, 50, h, 49.95, h + 0.12, 49.83, h + 0.24, 49.71, h + 0.29,
            0, h + 0.29);
    assertThat(isJog(after, 50, 50)).isTrue();
    Loop before =
        Round.through(
            0, 0, 100, 0, 100, h + 0.29, 50.29, h + 0.29, 50.17, h + 0.24, 50.05, h + 0.12, 50, h,
            50, 50, 0, 50);
    assertThat(isJog(before, 50, 50)).isTrue();
  }

  @Test
  void whatIsCutOffElsewhereLevelsNothingOut() {
    Loop before = Round.through(0, 0, 100, 0, 100, 49.8, 99.8, 50, 50, 50, 50, 100, 0, 100);
    assertThat(isJog(before, 50, 50)).isFalse();
    Loop after = Round.through(0, 0, 100, 0, 100, 50, 50, 50, 50, 99.8, 49.8, 100, 0, 100);
    assertThat(isJog(after, 50, 50)).isFalse();
  }

  @Test
  void aFilletThatRunsOnStraightIsNone() {
    Loop fillet =
        Round.from(0, 0)
            .to(100, 0)
            .to(100, 50)
            .to(50.5, 50)
            .right(0.5, 180, 90)
            .to(50, 51.05)
            .to(50, 100)
            .to(0, 100)
            .to(0, 0)
            .loop();
    assertThat(isJog(fillet, 50.5, 50)).isFalse();
  }

  /** An edge that steps aside by so much at its middle. */
  private static Loop step(double aside) {
    return Round.through(0, 0, 100, 0, 100, 50, 50, 50, 50, 50 + aside, 0, 50 + aside);
  }

  private static boolean isJog(Loop loop, double x, double y) {
    Knot knot =
        loop.knots().stream().filter(k -> k.at().equals(new Point(x, y))).findFirst().orElseThrow();
    return Jogs.isJog(loop, knot);
  }
}
