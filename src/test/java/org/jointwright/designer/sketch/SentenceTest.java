package org.jointwright.designer.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.jointwright.designer.sketch.Said.Turn;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SentenceTest {
  private static final Vocabulary ENGLISH = new Vocabulary(Words.english(UnitSystem.FEET_INCHES));

  private static Said read(String text) {
    return Sentence.read(text, ENGLISH, LengthUnit.FOOT);
  }

  private static Said side(double inches, Turn turn) {
    return new Said.Side(Length.inches(inches), turn, Optional.empty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "24'6 left|294|90",
        "24' 6 1/2\" left|294.5|90",
        "12'left|144|90",
        "12' l|144|90",
        "12' right|144|-90",
        "12' right 30|144|-30",
        "12' left 22.5°|144|22.5",
        "12' left 30 degrees|144|30",
        "24 ft 6 in left|294|90",
        "12 on|144|0",
        "24.5 LEFT|294|90",
      })
  void aSideIsALengthAndATurn(String text, double inches, double degrees) {
    assertThat(read(text)).isEqualTo(side(inches, new Turn.By(degrees)));
  }

  @Test
  void aBareLengthGoesTheWayOfThePencil() {
    assertThat(read("24'6")).isEqualTo(side(294, new Turn.Unsaid()));
  }

  @Test
  void upAndDownAreThoseOfThePaper() {
    assertThat(read("10' up")).isEqualTo(side(120, new Turn.OnPaper(90)));
    assertThat(read("10' down")).isEqualTo(side(120, new Turn.OnPaper(-90)));
  }

  @Test
  void anArcBulgesOutOrIn() {
    Turn unsaid = new Turn.Unsaid();
    Length twenty = Length.feet(20);
    assertThat(read("20' out 3'"))
        .isEqualTo(new Said.Side(twenty, unsaid, Optional.of(Length.feet(3))));
    assertThat(read("20' in 3'"))
        .isEqualTo(new Said.Side(twenty, unsaid, Optional.of(Length.feet(-3))));
    assertThat(read("20' left out 3'"))
        .isEqualTo(new Said.Side(twenty, new Turn.By(90), Optional.of(Length.feet(3))));
  }

  @Test
  void closeClosesAlsoWithAnArc() {
    assertThat(read("close")).isEqualTo(new Said.Close(Optional.empty()));
    assertThat(read("close out 2'")).isEqualTo(new Said.Close(Optional.of(Length.feet(2))));
  }

  @Test
  void metresAreReadAsWell() {
    assertThat(Sentence.read("7.5 left", ENGLISH, LengthUnit.METRE))
        .isEqualTo(side(7500 / 25.4, new Turn.By(90)));
    assertThat(read("750 mm left")).isEqualTo(side(750 / 25.4, new Turn.By(90)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"24' l", "24' le", "24' lef", "24' left"})
  void aWordStillBeingTypedDoesNotHideTheLength(String text) {
    assertThat(read(text)).isInstanceOf(Said.Side.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12' left 200",
        "left",
        "12' sideways 3",
        "0 left",
        "20' out",
        "20' out 11'",
        "12,5 left",
        "3 4 5",
        "-3 left"
      })
  void whatMakesNoSenseIsUnclear(String text) {
    assertThat(read(text)).isInstanceOf(Said.Unclear.class);
  }

  @Test
  void nothingTypedIsSilence() {
    assertThat(read("  ")).isEqualTo(new Said.Silent());
  }
}
