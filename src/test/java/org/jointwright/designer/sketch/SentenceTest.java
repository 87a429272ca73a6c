package org.jointwright.designer.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.sketch.Said.Turn;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Language;
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

  private static Said slanted(double over, double up) {
    Turn turn = new Turn.Slanted(Length.inches(over), Length.inches(up));
    return side(Math.hypot(over, up), turn);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "24'6 left|294|180",
        "24' 6 1/2\" left|294.5|180",
        "12'left|144|180",
        "12' l|144|180",
        "12' le|144|180",
        "24 ft 6 in left|294|180",
        "24.5 LEFT|294|180",
        "12' to the right|144|0",
        "right 12'|144|0",
        "10' up|120|90",
        "10' down|120|-90",
        "10 d|120|-90",
      })
  void leftRightUpAndDownAreThoseOfThePaper(String text, double inches, double degrees) {
    assertThat(read(text)).isEqualTo(side(inches, new Turn.OnPaper(degrees)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "12' turn left|144|90",
        "12' turn right 30|144|-30",
        "12 on|144|0",
      })
  void withTheWordItTurnsFromTheSideBefore(String text, double inches, double degrees) {
    assertThat(read(text)).isEqualTo(side(inches, new Turn.By(degrees)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "12' right 30|144|-30",
        "12' left 22.5°|144|22.5",
        "12' left 30 degrees|144|30",
      })
  void withDegreesItLeavesTheWayOfTheSideBefore(String text, double inches, double degrees) {
    assertThat(read(text)).isEqualTo(side(inches, new Turn.By(degrees)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "6' down 4' right",
        "4' right 6' down",
        "6' down, 4' right",
        "6' down and 4' right",
        "6' down 4' over to the right",
        "6' down over right 4'",
        "down 6' right 4'",
        "6 down 4 right",
        "6'down 4'right",
        "6 ft down 4 ft right",
      })
  void overAndDownIsOneSlantedSide(String text) {
    assertThat(read(text)).isEqualTo(slanted(48, -72));
  }

  @Test
  void aSlantedSideGoesAnyWayAndMayBulge() {
    assertThat(read("4' left 6' up")).isEqualTo(slanted(-48, 72));
    assertThat(read("6'6 up 3 1/2\" left")).isEqualTo(slanted(-3.5, 78));
    assertThat(Sentence.read("1.2 right 1.8 down", ENGLISH, LengthUnit.METRE))
        .isEqualTo(slanted(1200 / 25.4, -1800 / 25.4));
    assertThat(read("6' down 4' right out 1'"))
        .extracting(s -> ((Said.Side) s).bulge())
        .isEqualTo(Optional.of(Length.feet(1)));
  }

  @Test
  void spanishSaysItLikewise() {
    Vocabulary spanish = new Vocabulary(Words.of(Language.SPANISH, UnitSystem.FEET_INCHES));
    for (String text : List.of("6' abajo 4' derecha", "4' a la derecha y 6' hacia abajo")) {
      assertThat(Sentence.read(text, spanish, LengthUnit.FOOT)).isEqualTo(slanted(48, -72));
    }
  }

  /** Each says more than one side does, or less: none is placed with a part passed over. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "6' down over 4'|whichWay",
        "4' over 6' down|whichWay",
        "6' down 4'|whichWay",
        "6' down right|howFar",
        "left|howFar",
        "6' down 4' up|legs",
        "6' down 4' right 3' down|legs",
        "12' turn|turn",
        "12' left on|words",
        "12' sideways|words",
        "12' down please 3|words",
        "12' left close|close",
        "12' degrees|words",
      })
  void whatIsLeftOverIsSaid(String text, String key) {
    assertThat(read(text))
        .isInstanceOfSatisfying(
            Said.Unclear.class, u -> assertThat(u.key()).isEqualTo("window.unclear." + key));
  }

  @Test
  void aWordThatCouldBecomeTwoIsWaitedFor() {
    Said soFar = side(288, new Turn.Unsaid());
    assertThat(read("24' o")).isEqualTo(new Said.Unfinished(soFar));
    assertThat(read("24' o ")).isInstanceOf(Said.Unclear.class);
  }

  @Test
  void aBareLengthGoesTheWayOfThePencil() {
    assertThat(read("24'6")).isEqualTo(side(294, new Turn.Unsaid()));
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
        .isEqualTo(new Said.Side(twenty, new Turn.OnPaper(180), Optional.of(Length.feet(3))));
  }

  @Test
  void closeClosesAlsoWithAnArc() {
    assertThat(read("close")).isEqualTo(new Said.Close(Optional.empty()));
    assertThat(read("close out 2'")).isEqualTo(new Said.Close(Optional.of(Length.feet(2))));
  }

  @Test
  void metresAreReadAsWell() {
    assertThat(Sentence.read("7.5 left", ENGLISH, LengthUnit.METRE))
        .isEqualTo(side(7500 / 25.4, new Turn.OnPaper(180)));
    assertThat(read("750 mm left")).isEqualTo(side(750 / 25.4, new Turn.OnPaper(180)));
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
