package org.jointwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

class CutSheetsTest {
  /** 20 by 30 ft without a joint: much too long. */
  private static final Plan BARE =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                  "pad",
                  Outline.of(
                      List.of(
                          new Point(0, 0),
                          new Point(240, 0),
                          new Point(240, 360),
                          new Point(0, 360))))));

  private static CutSheets.Printed printed(Answer answer) throws UnprintableException {
    return CutSheets.printed(answer, Words.english(UnitSystem.FEET_INCHES), () -> true)
        .orElseThrow();
  }

  @Test
  void pagesToPrintAreLetterPaperLyingThreeHundredDotsAnInch() throws UnprintableException {
    CutSheets.Printed broken = printed(Answer.asItStands(BARE));
    assertThat(broken.width()).isCloseTo(279.4, within(1e-9));
    assertThat(broken.height()).isCloseTo(215.9, within(1e-9));
    byte[] png = broken.pictures().getFirst();
    // 11 x 8.5 in; the last dot is the PDF’s rounding.
    assertThat(size(png, 16)).isBetween(3299, 3301);
    assertThat(size(png, 20)).isBetween(2549, 2551);
    assertThat(png).isEqualTo(printed(Answer.asItStands(BARE)).pictures().getFirst());
  }

  /** A figure in the head of a PNG, where its width and its height stand. */
  private static int size(byte[] png, int at) {
    return java.nio.ByteBuffer.wrap(png).getInt(at);
  }

  @Test
  void whoIsToldToStopMakesNone() throws UnprintableException {
    assertThat(
            CutSheets.printed(
                Answer.asItStands(BARE), Words.english(UnitSystem.FEET_INCHES), () -> false))
        .isEmpty();
  }
}
