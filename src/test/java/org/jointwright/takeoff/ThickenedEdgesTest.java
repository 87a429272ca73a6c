package org.jointwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.jointwright.check.Sketch;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.junit.jupiter.api.Test;

/** What thickened edges take, against a published shape, figures by hand and a sum over squares. */
class ThickenedEdgesTest {
  private static final Thickened EIGHT_OVER_TWELVE =
      Thickened.USUAL.withDepth(Length.inches(8)).withOver(Length.inches(12));

  private static Takeoff of(Sketch sketch) {
    return Takeoff.of(Layouts.of(sketch.plan()), UnitSystem.FEET_INCHES);
  }

  private static double inches(Sketch sketch) {
    return ((Volume) of(sketch).of(Item.THICKENED).getFirst().amount().value()).cubicInches();
  }

  /** TM 5-809-12, 1987, and UFC 3-260-02, 2001, chapter 12: 125 percent, tapered over 5 ft. */
  @Test
  void theUsualIsAsPublished() {
    // Of 4 in: 1 in more over 60 in, half of it: 30 in2, 0.0077 yd3 in a foot.
    double four = inches(Sketch.rectangle(1200, 240).thick(4).thickened(0, Thickened.USUAL));
    assertThat(new Volume(four / 100).in(VolumeUnit.CUBIC_YARD)).isCloseTo(0.0077, within(5e-5));
    // Of 6 in: 45 in2, 0.0116 yd3 in a foot.
    double six = inches(Sketch.rectangle(1200, 240).thick(6).thickened(0, Thickened.USUAL));
    assertThat(new Volume(six / 100).in(VolumeUnit.CUBIC_YARD)).isCloseTo(0.0116, within(5e-5));
  }

  @Test
  void twoThatMeetAreNotCountedTwiceAtTheirCorner() {
    Sketch sketch =
        Sketch.rectangle(240, 120)
            .thick(4)
            .thickened(0, EIGHT_OVER_TWELVE)
            .thickened(1, EIGHT_OVER_TWELVE);
    double sum = 0;
    double step = 0.25;
    for (double x = step / 2; x < 240; x += step) {
      for (double y = step / 2; y < 120; y += step) {
        sum += step * step * Math.max(0, 4 * (1 - Math.min(y, 240 - x) / 12));
      }
    }
    assertThat(inches(sketch)).isCloseTo(sum, Percentage.withPercentage(0.05));
  }

  @Test
  void atAnInsideCornerTheyRunOnIntoIt() {
    // An L, its inside corner at 120, 120: 24 in2 by 120 in, twice, and beyond the corner a square
    // of 12 in where every line of one depth turns as the outline does.
    Sketch l =
        Sketch.polygon(0, 0, 240, 0, 240, 120, 120, 120, 120, 240, 0, 240)
            .thick(4)
            .thickened(2, EIGHT_OVER_TWELVE)
            .thickened(3, EIGHT_OVER_TWELVE);
    double corner = 0;
    double step = 0.05;
    for (double x = step / 2; x < 12; x += step) {
      for (double y = step / 2; y < 12; y += step) {
        corner += step * step * 4 * (1 - Math.max(x, y) / 12);
      }
    }
    assertThat(inches(l)).isCloseTo(2 * 24 * 120 + corner, Percentage.withPercentage(0.05));
  }

  @Test
  void aWedgeEndsWhereItsSideDoes() {
    // A triangle of 40 in: a wedge of 5 ft would reach beyond its tip.
    Sketch sketch =
        Sketch.polygon(0, 0, 40, 0, 0, 40)
            .thick(4)
            .thickened(0, EIGHT_OVER_TWELVE.withOver(Length.feet(5)));
    double sum = 0;
    double step = 0.05;
    for (double y = step / 2; y < 40; y += step) {
      sum += step * (40 - y) * 4 * (1 - y / 60);
    }
    assertThat(inches(sketch)).isCloseTo(sum, Percentage.withPercentage(0.05));
  }

  @Test
  void itIsOrderedWithTheSlabs() {
    // 20 x 20 ft at 4 in: 4.9383 yd3. Four mitred edges 8 in over 12: 24 in2 x 240 in less the
    // four mitres, 4 x 2 x 4 x 144 / 6 in3: 23,040 - 768 = 22,272 in3, 0.4774 yd3.
    Sketch pad = Sketch.rectangle(240, 240).thick(4);
    for (int i = 0; i < 4; i++) {
      pad = pad.thickened(i, EIGHT_OVER_TWELVE);
    }
    Takeoff t = of(pad);
    assertThat(inches(pad)).isCloseTo(22_272, within(1e-6));
    // 5.4157 yd3; 400 ft2 an eighth of an inch higher 0.1543; a fiftieth of both 0.1114: 5.6814.
    double ordered =
        ((Volume) t.of(Item.CONCRETE).getFirst().amount().value()).in(VolumeUnit.CUBIC_YARD);
    assertThat(ordered).isEqualTo(5.75);
  }

  @Test
  void whatIsNoThickerThanTheSlabTakesNothing() {
    assertThat(
            of(Sketch.rectangle(240, 240).thick(8).thickened(0, EIGHT_OVER_TWELVE))
                .of(Item.THICKENED))
        .isEmpty();
    assertThat(inches(Sketch.rectangle(240, 240).thick(7.99).thickened(0, EIGHT_OVER_TWELVE)))
        .isPositive();
  }
}
