package org.jointwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.InstanceOfAssertFactories;
import org.jointwright.measure.LengthFormatException.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthReaderTest {
  /** 24 ft 6 1/2 in. */
  private static final double LONG_ONE = 24 * 12 + 6.5;

  private static double read(String text) {
    return LengthReader.read(text, LengthUnit.FOOT).inches();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "24' 6 1/2\"",
        "24'6 1/2\"",
        "24'6 1/2",
        "24'6-1/2",
        "24' 6.5\"",
        "24ft 6 1/2in",
        "24ft6.5in",
        "24 ft. 6 1/2 in.",
        "24 FT 6 1/2 IN",
        "24 feet 6 1/2 inches",
        "24’ 6 1/2”",
        "24‘6½“",
        "24′-6½″",
        "24′–6½″",
        "24′—6 ½″",
        "24′−6¹⁄₂″",
        "24' - 6 1⁄2\"",
        "24'6½''",
        "24´6½´´",
        "  24' 6 1/2\"  ",
        "24\u00a0ft\u202f6\u00bd\u2009in",
        "294.5 in",
        "294 1/2\"",
        "294½″"
      })
  void everyWayToWriteFeetAndInchesSaysTheSame(String text) {
    assertThat(read(text)).isEqualTo(LONG_ONE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "24'6|294",
        "24'|288",
        "24 ft|288",
        "1 foot|12",
        "0'-0½″|0.5",
        "6 1/2\"|6.5",
        "6½″|6.5",
        "6⅛″|6.125",
        "6⅞|82.5",
        "6³⁄₁₆″|6.1875",
        "³⁄₁₆″|0.1875",
        "1′-0¹⁵⁄₁₆″|12.9375",
        "½″|0.5",
        "3/4 in|0.75",
        "1/2'|6",
        ".5 in|0.5",
        "7.|84",
        "18 in|18",
        "0|0",
        "-6 1/2\"|-6.5",
        "−1′-0½″|-12.5"
      })
  void feetAndInchesAreRead(String text, double inches) {
    assertThat(read(text)).isEqualTo(inches);
  }

  @ParameterizedTest
  @CsvSource({
    "7.47 m, 7470",
    "7470 mm, 7470",
    "747cm, 7470",
    "25 cm, 250",
    "7.470 metres, 7470",
    "1 meter, 1000",
    "100 MM, 100",
    "½ m, 500"
  })
  void metricIsRead(String text, double millimetres) {
    assertThat(LengthReader.read(text, LengthUnit.FOOT).in(LengthUnit.MILLIMETRE))
        .isCloseTo(millimetres, within(1e-9));
  }

  @Test
  void aBareNumberIsInTheCallersUnit() {
    assertThat(LengthReader.read("24.5", LengthUnit.FOOT)).isEqualTo(Length.feet(24.5));
    assertThat(LengthReader.read("24.5", LengthUnit.INCH)).isEqualTo(Length.inches(24.5));
    assertThat(LengthReader.read("2 1/2", LengthUnit.METRE))
        .isEqualTo(Length.of(2.5, LengthUnit.METRE));
  }

  @Test
  void aUnitOfItsOwnBeatsTheCallersUnit() {
    assertThat(LengthReader.read("4 in", LengthUnit.METRE)).isEqualTo(Length.inches(4));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "~~|EMPTY|0",
        "~   ~|EMPTY|0",
        "24,5|COMMA|2",
        "1,200 mm|COMMA|1",
        "24.5,0|COMMA|4",
        ", 5|COMMA|0",
        "six feet|UNKNOWN_UNIT|0",
        "24 yd|UNKNOWN_UNIT|3",
        "24'6 left|UNKNOWN_UNIT|5",
        "6%|UNKNOWN_UNIT|1",
        "1e5|UNKNOWN_UNIT|1",
        "ft|NO_NUMBER|0",
        "-|NO_NUMBER|1",
        "--6|NO_NUMBER|1",
        ".|NO_NUMBER|0",
        "24' -|NO_NUMBER|5",
        "24' ft|NO_NUMBER|4",
        "24 6|WHICH_IS_FEET|3",
        "24-6 1/2|WHICH_IS_FEET|2",
        "24.5' 6\"|BROKEN_FEET|6",
        "½' 3\"|BROKEN_FEET|3",
        "24' 12\"|INCHES_OVER_A_FOOT|4",
        "24'66|INCHES_OVER_A_FOOT|3",
        "1/0 in|BAD_FRACTION|0",
        "6 1/\"|BAD_FRACTION|2",
        "6 9/8\"|BAD_FRACTION|2",
        "6²|BAD_FRACTION|1",
        "6\" 3|TRAILING|3",
        "24' 6\" 2|TRAILING|7",
        "7 m 47|TRAILING|4",
        "24''6|TRAILING|4",
        "7.47 m.2|TRAILING|7"
      })
  void whatIsNoLengthIsRefusedWithItsPlace(String text, Fault fault, int position) {
    assertThatThrownBy(() -> LengthReader.read(text, LengthUnit.FOOT))
        .asInstanceOf(InstanceOfAssertFactories.throwable(LengthFormatException.class))
        .satisfies(e -> assertThat(e.fault()).isEqualTo(fault))
        .satisfies(e -> assertThat(e.position()).isEqualTo(position))
        .satisfies(e -> assertThat(e.text()).isEqualTo(text));
  }

  @Test
  void aTextFarTooLongIsRefusedUnread() {
    assertThatThrownBy(() -> read("1".repeat(100_000)))
        .asInstanceOf(InstanceOfAssertFactories.throwable(LengthFormatException.class))
        .satisfies(e -> assertThat(e.fault()).isEqualTo(Fault.TOO_LONG));
  }

  @Test
  void anythingAtAllIsReadOrRefusedButNeverBreaks() {
    String alphabet = "0123456789 .,-/'\"′″½⅛¹₆⁄ftinm c\u0000\ud83d";
    java.util.Random random = new java.util.Random(20260504);
    int refused = 0;
    for (int i = 0; i < 50_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(12); n >= 0; n--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      try {
        assertThat(read(text.toString())).isFinite();
      } catch (LengthFormatException e) {
        refused++;
        assertThat(e.position()).as(text.toString()).isBetween(0, text.length());
      }
    }
    assertThat(refused).isBetween(10_000, 49_900);
  }
}
