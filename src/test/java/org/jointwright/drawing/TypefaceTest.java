package org.jointwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TypefaceTest {
  @ParameterizedTest
  @EnumSource(Weight.class)
  void everyGlyphOfTheSheetsIsThere(Weight weight) {
    "½⅓⅔¼¾⅛⅜⅝⅞⅟′″×°øñáéíóúü¿¡¹⁄₁₆⁰²³⁴⁵⁶⁷⁸⁹₀–—"
        .codePoints()
        .forEach(c -> assertThat(Typeface.of(weight).has(c)).as("U+%04X", c).isTrue());
  }

  @Test
  void characterThatTheFontLacksIsKnown() {
    assertThat(Typeface.of(Weight.REGULAR).has(0x4E00)).isFalse();
  }

  @ParameterizedTest
  @EnumSource(Weight.class)
  void figuresAreAllOfOneWidth(Weight weight) {
    Typeface face = Typeface.of(weight);
    for (char c = '1'; c <= '9'; c++) {
      assertThat(face.width(String.valueOf(c), 10)).isCloseTo(face.width("0", 10), within(1e-9));
    }
  }

  @Test
  void fractionSetLargerMakesTheLineLonger() {
    Mark.Words plain = words("2′-1½″", 1);
    Mark.Words larger = words("2′-1½″", 1.25);
    double half = Typeface.of(Weight.BOLD).width("½", 10);
    assertThat(Runs.width(larger) - Runs.width(plain)).isCloseTo(half * 0.25, within(1e-9));
  }

  private static Mark.Words words(String text, double fraction) {
    return new Mark.Words(
        new Point(0, 0), text, 10, Weight.BOLD, Anchor.START, 0, fraction, Role.TEXT);
  }
}
