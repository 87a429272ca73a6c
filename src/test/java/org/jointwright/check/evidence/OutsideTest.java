package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What of a joint lies off the concrete, 9/16 in at either end forgiven. */
class OutsideTest {
  private static final Sketch U =
      Sketch.polygon(0, 0, 200, 0, 200, 100, 120, 100, 120, 40, 80, 40, 80, 100, 0, 100);

  private static List<Stretch> of(Sketch sketch, boolean filler, double... xy) {
    Path path = Path.straight(new Point(xy[0], xy[1]), new Point(xy[2], xy[3]));
    return new Outside(Evidence.of(sketch).concrete(), filler).of(path);
  }

  @Test
  void aJointAcrossANotchIsOutsideThere() {
    List<Stretch> out = of(U, false, 0, 80, 200, 80);
    assertThat(out).hasSize(1);
    assertThat(out.getFirst().length()).isCloseTo(40 - 2 * 0.5625, within(0.01));
    assertThat(out.getFirst().middle().distance(new Point(100, 80))).isCloseTo(0, within(0.01));
  }

  @Test
  void oneThatLeavesTheSlabIsOutsideBeyondIt() {
    List<Stretch> out = of(U, false, 40, 20, 40, 110);
    assertThat(Stretches.length(out)).isCloseTo(10 - 0.5625, within(0.01));
    assertThat(of(U, false, 0, 20, 200, 20)).isEmpty();
    assertThat(of(U, false, 40, 0, 40, 100.5)).isEmpty();
  }

  @Test
  void oneThatIsAllOutsideIsFoundWhole() {
    assertThat(Stretches.length(of(U, false, 220, 0, 220, 50))).isCloseTo(50, within(0.01));
    assertThat(Stretches.length(of(U, false, 90, 60, 110, 60))).isCloseTo(20, within(0.01));
  }

  @Test
  void fillerMayRunThroughABoxOut() {
    Sketch boxed =
        Sketch.rectangle(200, 100).post(100, 50, 8).bareBoxOut(80, 30, 120, 30, 120, 70, 80, 70);
    assertThat(Stretches.length(of(boxed, false, 0, 50, 200, 50)))
        .isCloseTo(40 - 2 * 0.5625, within(0.01));
    assertThat(of(boxed, true, 0, 50, 200, 50)).isEmpty();
    assertThat(Stretches.length(of(boxed, true, 0, 50, 210, 50)))
        .isCloseTo(10 - 0.5625, within(0.01));
    assertThat(of(boxed, false, 0, 20, 200, 20)).isEmpty();
  }
}
