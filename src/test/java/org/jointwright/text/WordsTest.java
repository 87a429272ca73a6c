package org.jointwright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.Rounding;
import org.jointwright.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class WordsTest {
  private static final Words FEET = Words.english(UnitSystem.FEET_INCHES);
  private static final Words METRIC = Words.english(UnitSystem.METRIC);

  @Test
  void firstPartOfTheKeyPicksTheBundle() {
    assertThat(FEET.say("greeting.plain")).isEqualTo("Good morning");
  }

  @Test
  void lengthsAndAreasAreSaidInTheReadersMeasures() {
    Object[] arguments = {Length.inches(120.5), new Area(144 * 120)};
    assertThat(FEET.say("greeting.sizes", arguments)).isEqualTo("It's 10′-0½″ and 120 ft²");
    assertThat(METRIC.say("greeting.sizes", arguments)).isEqualTo("It's 3.060 m and 11.15 m²");
  }

  @Test
  void examplesAreSaidInTheReadersMeasures() {
    assertThat(FEET.say("greeting.example")).isEqualTo("for example 24′6");
    assertThat(METRIC.say("greeting.example")).isEqualTo("for example 7.50");
  }

  @Test
  void lengthsAreSaidToTheStepAskedFor() {
    Words fine = Words.english(Rounding.SIXTEENTH_INCH);
    assertThat(fine.say("greeting.sizes", Length.inches(0.1875), new Area(0))).contains("³⁄₁₆″");
    assertThat(fine.rounded(Rounding.CENTIMETRE).units()).isEqualTo(UnitSystem.METRIC);
    assertThat(FEET.rounding()).isEqualTo(Rounding.EIGHTH_INCH);
  }

  @Test
  void anotherLanguageIsReadWhereItHasTheKeyAndEnglishElsewhere() {
    Words spanish = Words.of(Locale.of("es"), UnitSystem.METRIC);
    assertThat(spanish.say("greeting.plain")).isEqualTo("Buenos días");
    assertThat(spanish.say("greeting.count", 2)).isEqualTo("2 panels");
  }

  @Test
  void numbersChooseTheirForm() {
    assertThat(FEET.say("greeting.count", 1)).isEqualTo("1 panel");
    assertThat(FEET.say("greeting.count", 2)).isEqualTo("2 panels");
  }

  @Test
  void aKeyWithoutTextIsAFaultOfTheProgramAndNamed() {
    assertThat(FEET.knows("greeting.plain")).isTrue();
    for (String key : new String[] {"greeting.absent", "absent.key", "nodot", ".dot"}) {
      assertThat(FEET.knows(key)).isFalse();
      assertThatThrownBy(() -> FEET.say(key))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(key);
    }
  }

  @Test
  void everyFaultOfALengthHasItsWords() {
    for (String text :
        new String[] {
          "", "24,5", "24 6", "24 yd", "1/0", "24' 12", "½' 3", "ft", "7 m 2", "1".repeat(99)
        }) {
      try {
        LengthReader.read(text, LengthUnit.FOOT);
        throw new AssertionError(text + " was read");
      } catch (LengthFormatException e) {
        assertThat(FEET.say(e)).doesNotContain("{").endsWith(".");
      }
    }
  }

  @Test
  void theFaultOfALengthNamesThePlaceAndTheRemedy() {
    LengthFormatException e = fault("24 yd");
    assertThat(FEET.say(e))
        .isEqualTo("“24 yd”: “yd” is no unit known here. Use ' or ft, \" or in, mm, cm, m.");
  }

  private static LengthFormatException fault(String text) {
    try {
      throw new AssertionError(LengthReader.read(text, LengthUnit.FOOT).toString());
    } catch (LengthFormatException e) {
      return e;
    }
  }
}
