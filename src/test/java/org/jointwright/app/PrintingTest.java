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

class PrintingTest {
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

  private static Sheets.Wanted on(String paper) {
    return new Sheets.Wanted(
        List.of(SheetKind.CREW, SheetKind.PLANT), Words.english(UnitSystem.FEET_INCHES), paper);
  }

  private static List<Printing.Leaf> printed(String paper) throws UnprintableException {
    return Printing.leaves(Answer.asItStands(BARE), on(paper), () -> true).orElseThrow();
  }

  @Test
  void pagesAreAsLargeAsTheirPaperAtThreeHundredDotsAnInch() throws UnprintableException {
    Printing.Leaf leaf = printed("letter").getFirst();
    assertThat(Math.max(leaf.width(), leaf.height())).isCloseTo(279.4, within(1e-9));
    assertThat(Math.min(leaf.width(), leaf.height())).isCloseTo(215.9, within(1e-9));
    byte[] png = leaf.picture();
    // 11 x 8.5 in; the last dot is the PDF’s rounding.
    assertThat(size(png, leaf.stands() ? 20 : 16)).isBetween(3299, 3301);
    assertThat(size(png, leaf.stands() ? 16 : 20)).isBetween(2549, 2551);
    assertThat(png).isEqualTo(printed("letter").getFirst().picture());
  }

  @Test
  void pagesAreNamedAfterTheirSheets() throws UnprintableException {
    List<Printing.Leaf> leaves = printed("a3");
    assertThat(leaves)
        .extracting(Printing.Leaf::title)
        .startsWith("Cut sheet")
        .endsWith("Order sheet");
    assertThat(leaves)
        .allSatisfy(l -> assertThat(Math.max(l.width(), l.height())).isCloseTo(420, within(1e-9)));
  }

  /** A figure in the head of a PNG, where its width and its height stand. */
  private static int size(byte[] png, int at) {
    return java.nio.ByteBuffer.wrap(png).getInt(at);
  }

  @Test
  void whoIsToldToStopMakesNone() throws UnprintableException {
    assertThat(Printing.leaves(Answer.asItStands(BARE), on("a4"), () -> false)).isEmpty();
  }
}
