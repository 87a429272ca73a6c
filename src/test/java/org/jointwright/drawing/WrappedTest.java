package org.jointwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WrappedTest {
  private static double width(String text) {
    return Typeface.of(Weight.REGULAR).width(text, 17);
  }

  @Test
  void aTextThatJustFitsIsOneLine() {
    String text = "20 ft to the right";
    assertThat(Wrapped.lines(text, 17, width(text))).containsExactly(text);
    assertThat(Wrapped.lines(text, 17, width(text) - 0.1)).containsExactly("20 ft to the", "right");
  }

  @Test
  void aWordLongerThanTheRoomStandsAlone() {
    assertThat(Wrapped.lines("a roundabout b", 17, width("round")))
        .containsExactly("a", "roundabout", "b");
  }

  @Test
  void theWidestLineSaysHowWideAllAre() {
    assertThat(Wrapped.width(List.of("ten", "eleven", "one"), 17)).isEqualTo(width("eleven"));
  }
}
