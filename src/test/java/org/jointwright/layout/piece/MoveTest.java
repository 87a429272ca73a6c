package org.jointwright.layout.piece;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** How far cuts go on through joints. */
class MoveTest {
  private static final Point SEED = new Point(50, 10);
  private static final Move ALL =
      new Move(new Carrier.Line(new Point(0, 10), new Point(1, 0)), SEED, Move.Reach.THROUGH);

  @Test
  void acrossOnePieceItGoesOnBeyondNoJoint() {
    assertThat(ALL.reaching(Move.Reach.PIECE).goesBeyond(new Point(60, 10))).isFalse();
  }

  @Test
  void withoutLimitsItGoesOnBeyondEach() {
    assertThat(ALL.goesBeyond(new Point(1e6, 10))).isTrue();
    assertThat(ALL.goesBeyond(new Point(-1e6, 10))).isTrue();
  }

  @Test
  void itEndsAtTheFirstJointAtALimitOrBeyond() {
    Move upTo = ALL.upTo(new Point(20, 10), new Point(90, 10));
    assertThat(upTo.goesBeyond(new Point(89.9, 10))).isTrue();
    assertThat(upTo.goesBeyond(new Point(90, 10))).isFalse();
    assertThat(upTo.goesBeyond(new Point(95, 10))).isFalse();
    assertThat(upTo.goesBeyond(new Point(20.1, 10))).isTrue();
    assertThat(upTo.goesBeyond(new Point(20, 10))).isFalse();
  }

  @Test
  void limitsMirrorAndShiftWithIt() {
    Move upTo = ALL.upTo(new Point(20, 10), new Point(90, 10));
    Move mirrored = upTo.mirrored(new Mirror(new Point(0, 0), new Point(0, 1)));
    assertThat(mirrored.goesBeyond(new Point(-89, 10))).isTrue();
    assertThat(mirrored.goesBeyond(new Point(-91, 10))).isFalse();
    assertThat(mirrored.goesBeyond(new Point(-19, 10))).isFalse();
    Move shifted = upTo.on(upTo.carrier().shifted(5));
    assertThat(shifted.goesBeyond(new Point(89, 15))).isTrue();
    assertThat(shifted.goesBeyond(new Point(91, 15))).isFalse();
  }

  @Test
  void onACircleLimitsLieToEitherSideOfTheSeed() {
    Carrier circle = new Carrier.Circle(new Point(0, 0), 100);
    // The seed stands where places jump from pi to minus pi.
    Move turn =
        new Move(circle, circle.at(Math.PI), Move.Reach.THROUGH)
            .upTo(circle.at(Math.PI - 0.5), circle.at(-Math.PI + 0.5));
    assertThat(turn.goesBeyond(circle.at(-Math.PI + 0.4))).isTrue();
    assertThat(turn.goesBeyond(circle.at(-Math.PI + 0.6))).isFalse();
    assertThat(turn.goesBeyond(circle.at(Math.PI - 0.4))).isTrue();
    assertThat(turn.goesBeyond(circle.at(Math.PI - 0.6))).isFalse();
  }
}
