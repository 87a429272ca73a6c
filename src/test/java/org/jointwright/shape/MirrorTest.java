package org.jointwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MirrorTest {
  private static final Mirror UPRIGHT = new Mirror(new Point(10, 3), new Point(0, 1));
  private static final Mirror SLANTED = new Mirror(new Point(1, 2), new Point(0.6, 0.8));

  @Test
  void aPointGoesAsFarBeyondTheLine() {
    assertThat(UPRIGHT.of(new Point(4, 7))).isEqualTo(new Point(16, 7));
    assertThat(UPRIGHT.turned(new Point(1, 0))).isEqualTo(new Point(-1, 0));
    assertThat(SLANTED.of(new Point(1, 2))).isEqualTo(new Point(1, 2));
  }

  @Test
  void whatIsMirroredTwiceIsWhereItWas() {
    Point p = new Point(-3.5, 11.25);
    assertThat(SLANTED.of(SLANTED.of(p)).distance(p)).isCloseTo(0, within(1e-12));
  }

  @Test
  void anArcTurnsTheOtherWayOnTheSameCircle() {
    Arc arc = (Arc) Arc.through(new Point(0, 0), new Point(6, 2), new Point(9, 8));
    Arc image = (Arc) SLANTED.of(arc);
    assertThat(image.radius()).isCloseTo(arc.radius(), within(1e-9));
    assertThat(image.turn()).isCloseTo(-arc.turn(), within(1e-12));
    for (double share : new double[] {0, 0.3, 1}) {
      assertThat(image.at(share).distance(SLANTED.of(arc.at(share)))).isLessThan(1e-9);
    }
  }
}
