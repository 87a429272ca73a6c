package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A tape hooks at either end of a side; its marks are whole inches, or ten millimetres. */
class MarksTest {
  @Test
  void aPlaceIsOffTheNearestMarkFromTheBetterEnd() {
    assertThat(Marks.offWhole(100, 36, UnitSystem.FEET_INCHES)).isZero();
    assertThat(Marks.offWhole(100, 36.25, UnitSystem.FEET_INCHES)).isCloseTo(0.25, within(1e-12));
    assertThat(Marks.offWhole(100, 36.75, UnitSystem.FEET_INCHES)).isCloseTo(0.25, within(1e-12));
    assertThat(Marks.offWhole(100.4, 36.4, UnitSystem.FEET_INCHES)).isCloseTo(0, within(1e-9));
    assertThat(Marks.offWhole(100.4, 36.3, UnitSystem.FEET_INCHES)).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void aMetricTapeHasMarksEveryTenMillimetres() {
    double mm = 1 / 25.4;
    assertThat(Marks.offWhole(3000 * mm, 1230 * mm, UnitSystem.METRIC)).isCloseTo(0, within(1e-9));
    assertThat(Marks.offWhole(3000 * mm, 1233 * mm, UnitSystem.METRIC))
        .isCloseTo(3 * mm, within(1e-9));
    assertThat(Marks.offWhole(3000 * mm, 1236 * mm, UnitSystem.METRIC))
        .isCloseTo(4 * mm, within(1e-9));
  }
}
