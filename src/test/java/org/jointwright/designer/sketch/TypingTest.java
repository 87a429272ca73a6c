package org.jointwright.designer.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.designer.sketch.Typing.Motion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The sentence is edited as text is in any field. */
class TypingTest {
  private static final Typing SIDE = Typing.of("12' left out 3'");

  @ParameterizedTest
  @CsvSource({
    "START, 5, 0",
    "END, 5, 15",
    "BACK, 5, 4",
    "BACK, 0, 0",
    "ON, 5, 6",
    "ON, 15, 15",
    "WORD_BACK, 6, 4",
    "WORD_BACK, 4, 0",
    "WORD_BACK, 0, 0",
    "WORD_ON, 0, 4",
    "WORD_ON, 5, 9",
    "WORD_ON, 15, 15",
  })
  void theCaretIsLed(Motion motion, int from, int to) {
    assertThat(SIDE.led(from, false).moved(motion, false)).isEqualTo(SIDE.led(to, false));
    Typing picking = SIDE.led(from, false).moved(motion, true);
    assertThat(picking.anchor()).isEqualTo(from);
    assertThat(picking.caret()).isEqualTo(to);
  }

  @Test
  void whatIsPutTakesThePlaceOfWhatIsPicked() {
    Typing word = SIDE.led(4, false).led(8, true);
    assertThat(word.picked()).isEqualTo("left");
    assertThat(word.put("right").text()).isEqualTo("12' right out 3'");
    assertThat(word.put("right").caret()).isEqualTo(9);
    assertThat(SIDE.all().put("6")).isEqualTo(Typing.of("6"));
    assertThat(SIDE.led(2, false).put(" 6").text()).isEqualTo("12 6' left out 3'");
  }

  @Test
  void aPickIsLeftAtItsNearerEnd() {
    Typing word = SIDE.led(8, false).led(4, true);
    assertThat(word.moved(Motion.BACK, false).caret()).isEqualTo(4);
    assertThat(word.moved(Motion.ON, false).caret()).isEqualTo(8);
    assertThat(word.moved(Motion.ON, false).picked()).isEmpty();
  }

  @Test
  void aKeyThatTakesOutTakesThePickOrElseASignOrAWord() {
    assertThat(SIDE.without(Motion.BACK)).isEqualTo(Typing.of("12' left out 3"));
    assertThat(SIDE.without(Motion.WORD_BACK)).isEqualTo(Typing.of("12' left out "));
    assertThat(SIDE.without(Motion.ON)).as("nothing behind it").isEqualTo(SIDE);
    assertThat(SIDE.led(4, false).without(Motion.WORD_ON).text()).isEqualTo("12' out 3'");
    assertThat(SIDE.led(4, false).led(9, true).without(Motion.BACK).text()).isEqualTo("12' out 3'");
    assertThat(SIDE.all().without(Motion.BACK)).isEqualTo(Typing.NONE);
  }

  @Test
  void itHoldsNoMoreSignsThanASentenceHas() {
    Typing nearly = Typing.of("1".repeat(Typing.LONGEST - 1));
    assertThat(nearly.put("23").text()).hasSize(Typing.LONGEST).endsWith("2");
    assertThat(nearly.put("2").put("3").text()).hasSize(Typing.LONGEST).endsWith("2");
    assertThat(nearly.all().put("9".repeat(99)).text()).isEqualTo("9".repeat(Typing.LONGEST));
  }

  @ParameterizedTest
  @EnumSource(Motion.class)
  void nothingIsTakenOutOfNothing(Motion motion) {
    assertThat(Typing.NONE.without(motion)).isEqualTo(Typing.NONE);
    assertThat(Typing.NONE.moved(motion, true)).isEqualTo(Typing.NONE);
  }
}
