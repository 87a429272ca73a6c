package org.jointwright.practice;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.measure.Length;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.SpacingRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source of the table: PCA Concrete Floors on Ground, 2nd ed. 1983, as quoted in a databook. */
class SpacingTest {
  private static Jointing by(SpacingRule rule) {
    return Jointing.DEFAULT.withRule(rule);
  }

  /** The table prints whole feet, halves up. */
  private static long printedFeet(SpacingRule rule, double thickness) {
    return (long) Math.floor(Spacing.uncapped(rule, Length.inches(thickness)).feet() + 0.5);
  }

  @ParameterizedTest
  @CsvSource({
    "4, 8, 10, 12",
    "5, 10, 13, 15",
    "6, 12, 15, 18",
    "7, 14, 18, 21",
    "8, 16, 20, 24",
    "9, 18, 23, 27",
    "10, 20, 25, 30"
  })
  void theRulesGiveThePublishedTable(double thickness, long t24, long t30, long t36) {
    assertThat(printedFeet(SpacingRule.T24, thickness)).isEqualTo(t24);
    assertThat(printedFeet(SpacingRule.T30, thickness)).isEqualTo(t30);
    assertThat(printedFeet(SpacingRule.T36, thickness)).isEqualTo(t36);
  }

  @ParameterizedTest
  @CsvSource({"4, 10", "5, 12.5", "6, 15", "8, 15", "24, 15"})
  void theDefaultIsThirtyThicknessesCappedAtFifteenFeet(double thickness, double feet) {
    assertThat(Spacing.longest(Length.inches(thickness), Jointing.DEFAULT, 0).feet())
        .isEqualTo(feet);
  }

  @ParameterizedTest
  @CsvSource({"T24, 6, 12", "T24, 10, 15", "T36, 4, 12", "T36, 6, 15"})
  void everyRuleIsCapped(SpacingRule rule, double thickness, double feet) {
    assertThat(Spacing.longest(Length.inches(thickness), by(rule), 0).feet()).isEqualTo(feet);
  }

  @ParameterizedTest
  @CsvSource({"48, 5", "60, 6.5", "36, 4", "47.99, 5", "48.2, 5.5", "96, 10", "120, 10"})
  void aWalkIsAsLongAsItIsWideAndAQuarterRoundedUpToHalfFeet(double widthInches, double feet) {
    assertThat(Spacing.longest(Length.inches(4), by(SpacingRule.WALK), widthInches).feet())
        .isEqualTo(feet);
  }

  @Test
  void theUsersOwnSpacingOverridesEveryRule() {
    Jointing own = by(SpacingRule.WALK).withMaxSpacing(Length.feet(18));
    assertThat(Spacing.longest(Length.inches(4), own, 48).feet()).isEqualTo(18);
    assertThat(Spacing.needsWidth(own)).isFalse();
  }

  @Test
  void onlyAWalkNeedsTheWidth() {
    assertThat(Spacing.needsWidth(by(SpacingRule.WALK))).isTrue();
    assertThat(Spacing.needsWidth(Jointing.DEFAULT)).isFalse();
  }
}
