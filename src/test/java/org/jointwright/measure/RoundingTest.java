package org.jointwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RoundingTest {
  @ParameterizedTest
  @CsvSource({
    "SIXTEENTH_INCH, 0.0625",
    "EIGHTH_INCH, 0.125",
    "QUARTER_INCH, 0.25",
    "HALF_INCH, 0.5",
    "WHOLE_INCH, 1",
    "MILLIMETRE, 0.03937007874015748",
    "FIVE_MILLIMETRES, 0.1968503937007874",
    "CENTIMETRE, 0.3937007874015748"
  })
  void stepIsWhatTheNameSays(Rounding rounding, double inches) {
    assertThat(rounding.step().inches()).isCloseTo(inches, within(1e-15));
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void roundsToTheNearerStepOnBothSidesOfHalf(Rounding rounding) {
    double step = rounding.step().inches();
    assertThat(steps(rounding, 7.499 * step)).isEqualTo(7);
    assertThat(steps(rounding, 7.501 * step)).isEqualTo(8);
    assertThat(steps(rounding, -7.499 * step)).isEqualTo(-7);
    assertThat(steps(rounding, -7.501 * step)).isEqualTo(-8);
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void roundsUpWhateverIsOverAStepButNoise(Rounding rounding) {
    double step = rounding.step().inches();
    assertThat(up(rounding, 7 * step)).isEqualTo(7);
    assertThat(up(rounding, (7 + 1e-7) * step)).isEqualTo(7);
    assertThat(up(rounding, 7.00001 * step)).isEqualTo(8);
    assertThat(up(rounding, 7.999 * step)).isEqualTo(8);
  }

  private static long up(Rounding rounding, double inches) {
    return Math.round(rounding.up(Length.inches(inches)).inches() / rounding.step().inches());
  }

  private static long steps(Rounding rounding, double inches) {
    return Math.round(rounding.round(Length.inches(inches)).inches() / rounding.step().inches());
  }

  @Test
  void halfGoesAwayFromZeroInSpiteOfNoise() {
    assertThat(Rounding.FIVE_MILLIMETRES.round(Length.millimetres(12.5)))
        .isEqualTo(Length.millimetres(15));
    assertThat(Rounding.EIGHTH_INCH.round(Length.inches(0.0625 - 1e-12)))
        .isEqualTo(Length.inches(0.125));
    assertThat(Rounding.EIGHTH_INCH.round(Length.inches(-0.0625))).isEqualTo(Length.inches(-0.125));
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void roundingTwiceIsRoundingOnce(Rounding rounding) {
    for (double inches = -40; inches < 40; inches += 0.0173) {
      Length once = rounding.round(Length.inches(inches));
      assertThat(rounding.round(once)).isEqualTo(once);
    }
  }

  @Test
  void everyStepBelongsToItsMeasures() {
    assertThat(Rounding.QUARTER_INCH.system()).isEqualTo(UnitSystem.FEET_INCHES);
    assertThat(Rounding.CENTIMETRE.system()).isEqualTo(UnitSystem.METRIC);
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(system.rounding().system()).isEqualTo(system);
    }
  }
}
