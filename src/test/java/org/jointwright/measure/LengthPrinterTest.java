package org.jointwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LengthPrinterTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "294.5|EIGHTH_INCH|24′-6½″|24' 6 1/2\"",
        "294|EIGHTH_INCH|24′-6″|24' 6\"",
        "288|EIGHTH_INCH|24′-0″|24' 0\"",
        "288.5|EIGHTH_INCH|24′-0½″|24' 0 1/2\"",
        "6.5|EIGHTH_INCH|6½″|6 1/2\"",
        "0.5|EIGHTH_INCH|½″|1/2\"",
        "0|EIGHTH_INCH|0″|0\"",
        "-6.5|EIGHTH_INCH|−6½″|-6 1/2\"",
        "-0.01|EIGHTH_INCH|0″|0\"",
        "0.25|EIGHTH_INCH|¼″|1/4\"",
        "0.75|EIGHTH_INCH|¾″|3/4\"",
        "0.125|EIGHTH_INCH|⅛″|1/8\"",
        "0.375|EIGHTH_INCH|⅜″|3/8\"",
        "0.625|EIGHTH_INCH|⅝″|5/8\"",
        "0.875|EIGHTH_INCH|⅞″|7/8\"",
        "0.1875|SIXTEENTH_INCH|³⁄₁₆″|3/16\"",
        "12.9375|SIXTEENTH_INCH|1′-0¹⁵⁄₁₆″|1' 0 15/16\"",
        "6.5|SIXTEENTH_INCH|6½″|6 1/2\"",
        "6.3|QUARTER_INCH|6¼″|6 1/4\"",
        "6.3|HALF_INCH|6½″|6 1/2\"",
        "6.3|WHOLE_INCH|6″|6\"",
        "6.5|WHOLE_INCH|7″|7\""
      })
  void feetAndInchesArePrintedToTheStep(double inches, Rounding to, String fine, String plain) {
    assertThat(LengthPrinter.print(Length.inches(inches), to)).isEqualTo(fine);
    assertThat(LengthPrinter.plain(Length.inches(inches), to)).isEqualTo(plain);
  }

  @ParameterizedTest
  @CsvSource({
    "7470, MILLIMETRE, 7.470 m",
    "7473, FIVE_MILLIMETRES, 7.475 m",
    "7473, CENTIMETRE, 7.47 m",
    "100, MILLIMETRE, 100 mm",
    "102, FIVE_MILLIMETRES, 100 mm",
    "102, CENTIMETRE, 0.10 m",
    "999.6, MILLIMETRE, 1.000 m",
    "998, FIVE_MILLIMETRES, 1.000 m",
    "996, CENTIMETRE, 1.00 m",
    "12.5, FIVE_MILLIMETRES, 15 mm",
    "0, MILLIMETRE, 0 mm",
    "-250, MILLIMETRE, −250 mm",
    "-1250, MILLIMETRE, −1.250 m"
  })
  void metricIsPrintedToTheStep(double millimetres, Rounding to, String fine) {
    assertThat(LengthPrinter.print(Length.millimetres(millimetres), to)).isEqualTo(fine);
    assertThat(LengthPrinter.plain(Length.millimetres(millimetres), to))
        .isEqualTo(fine.replace('−', '-'));
  }

  @ParameterizedTest
  @EnumSource(names = {"SIXTEENTH_INCH", "EIGHTH_INCH", "QUARTER_INCH", "HALF_INCH", "WHOLE_INCH"})
  void elevenAndThirtyOneThirtySecondsCarriesIntoAFoot(Rounding to) {
    assertThat(LengthPrinter.print(Length.inches(11 + 31 / 32.0), to)).isEqualTo("1′-0″");
    assertThat(LengthPrinter.plain(Length.inches(11 + 31 / 32.0), to)).isEqualTo("1' 0\"");
    assertThat(LengthPrinter.print(Length.inches(23 + 31 / 32.0), to)).isEqualTo("2′-0″");
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void whatIsPrintedReadsBackWithinHalfAStep(Rounding to) {
    Random random = new Random(20260504);
    double half = to.step().inches() / 2 * (1 + 1e-6);
    for (int i = 0; i < 5_000; i++) {
      Length length = Length.inches((random.nextDouble() - 0.3) * 5000);
      for (String text :
          new String[] {LengthPrinter.print(length, to), LengthPrinter.plain(length, to)}) {
        assertThat(LengthReader.read(text, LengthUnit.FOOT).inches())
            .as("%s printed as %s", length, text)
            .isCloseTo(length.inches(), within(half));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void everyWholeStepReadsBackAsItself(Rounding to) {
    for (int steps = -2_000; steps <= 2_000; steps++) {
      Length length = to.round(Length.inches(steps * to.step().inches()));
      String text = LengthPrinter.print(length, to);
      Length again = LengthReader.read(text, LengthUnit.MILLIMETRE);
      assertThat(again.inches()).as(text).isCloseTo(length.inches(), within(1e-9));
      assertThat(LengthPrinter.print(again, to)).isEqualTo(text);
    }
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void plainPrintIsAscii(Rounding to) {
    for (double inches = -30; inches < 30; inches += 0.07) {
      assertThat(LengthPrinter.plain(Length.inches(inches), to)).isASCII();
    }
  }

  @Test
  void hugeLengthsPrintInFull() {
    assertThat(LengthPrinter.print(Length.feet(1_000_000), Rounding.SIXTEENTH_INCH))
        .isEqualTo("1000000′-0″");
  }
}
