package org.jointwright.file.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.jointwright.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DecimalsTest {
  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void everyLengthIsReadBackFromItsShortestDecimal(LengthUnit unit) {
    Random random = new Random(17);
    for (int i = 0; i < 20_000; i++) {
      double inches = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9) - 2);
      assertThat(Decimals.inches(Decimals.shortest(inches, unit), unit)).isEqualTo(inches);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.1, FOOT",
    "35.4568, FOOT",
    "24.5, FOOT",
    "-3.25, INCH",
    "7.47, METRE",
    "6000, MILLIMETRE",
    "0.1, METRE",
    "12.3, CENTIMETRE",
    "0, FOOT"
  })
  void decimalAsPeopleWriteItComesBackAsItWas(String decimal, LengthUnit unit) {
    assertThat(Decimals.shortest(Decimals.inches(decimal, unit), unit)).isEqualTo(decimal);
  }

  @Test
  void numberTooLargeForAPlanIsInfiniteAtOnce() {
    assertThat(Decimals.inches("1e999999999", LengthUnit.FOOT)).isInfinite();
    assertThat(Decimals.inches("-1e400", LengthUnit.FOOT)).isInfinite();
    assertThat(Decimals.inches("1e-999999999", LengthUnit.FOOT)).isZero();
  }
}
