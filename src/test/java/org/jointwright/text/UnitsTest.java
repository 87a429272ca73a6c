package org.jointwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No line ends between a figure and its unit. */
class UnitsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"15.6 m", "7.5 m³", "60.32 m²", "400 mm", "12.3 L", "14.6 t", "6 ft", "4–12 h"})
  void figureAndUnitAreOne(String amount) {
    assertThat(Units.words("some " + amount + ", and more"))
        .containsExactly("some", amount + ",", "and", "more");
    assertThat(Units.bound(amount)).isEqualTo(amount.replace(' ', '\u00a0'));
  }

  @Test
  void whatOnlyBeginsLikeAUnitIsAWord() {
    assertThat(Units.words("3 minutes, 2 mats and corner L")).hasSize(6 + 1);
    assertThat(Units.bound("3 minutes, 2 mats and corner L"))
        .isEqualTo("3 minutes, 2 mats and corner L");
  }
}
