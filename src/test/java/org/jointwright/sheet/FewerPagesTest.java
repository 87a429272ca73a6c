package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.drawing.Mark;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.shape.Point;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** A plan goes on as few pages as tell it, and lies on them as its owner drew it. */
class FewerPagesTest {
  private static final String PATIO = "patio-landing-and-walk.jointwright";
  private static final Words FEET = Words.english(UnitSystem.FEET_INCHES);
  private static final Words METRES = Words.english(UnitSystem.METRIC);

  private static List<Page> cut(String name, Words words, Paper paper) {
    return LaidPlans.pages(name, Kind.CUT, words, paper);
  }

  private static Stream<Mark.Words> words(List<Mark> marks) {
    return marks.stream()
        .flatMap(
            m ->
                switch (m) {
                  case Mark.Words w -> Stream.of(w);
                  case Mark.Group g -> words(g.marks());
                  default -> Stream.empty();
                });
  }

  /** Where the letters of the corners stand on a page, millimetres, y down. */
  private static Map<String, Point> letters(Page page) {
    return words(page.marks())
        .filter(w -> w.text().matches("[A-Z]") && w.size() >= Type.CORNER_TIGHT.size())
        .collect(Collectors.toMap(Mark.Words::text, Mark.Words::at, (a, b) -> a));
  }

  @Test
  void aPatioWithALandingAndAWalkIsNotParted() {
    assertThat(cut(PATIO, FEET, Paper.LETTER)).hasSize(2);
    assertThat(cut(PATIO, METRES, Paper.A4)).hasSize(2);
    assertThat(PageTexts.of(cut(PATIO, METRES, Paper.A4).getFirst()))
        .noneMatch(t -> t.startsWith("part "));
  }

  @Test
  void aLargeSheetHoldsItOnOnePageWithTheListsInTwoColumns() {
    assertThat(cut(PATIO, METRES, Paper.A2)).hasSize(1);
    assertThat(cut(PATIO, FEET, Paper.ARCH_C)).hasSize(1);
  }

  @Test
  void aCrowdedPadIsNoReasonToPartALargeSheet() {
    assertThat(PageTexts.of(cut("drive-walk-and-pad.jointwright", METRES, Paper.A2).getFirst()))
        .contains("16")
        .noneMatch(t -> t.startsWith("part "));
  }

  @Test
  void itIsNotTurnedWhereThatDrawsItNoLarger() {
    Map<String, Point> letters = letters(cut(PATIO, FEET, Paper.LETTER).getFirst());
    // The house runs along the upper side, from M over E to D; A is the lower left corner.
    assertThat(letters.get("D").x()).isGreaterThan(letters.get("E").x() + 50);
    assertThat(letters.get("A").y()).isGreaterThan(letters.get("E").y() + 20);
  }

  @Test
  void itIsTurnedWhereThatDrawsItLarger() {
    // Upright the patio is a scale smaller in metres on A4.
    Map<String, Point> letters = letters(cut(PATIO, METRES, Paper.A4).getFirst());
    assertThat(letters.get("D").y()).isGreaterThan(letters.get("E").y() + 50);
  }

  @Test
  void aSecondColumnDrawsThePlanNoSmaller() {
    // The scale that one column allows: the field had room to spare.
    assertThat(CutSheet.sheet(Layouts.of(LaidPlans.plan(PATIO)), options(Paper.A2)).scale())
        .isEqualTo("1:50");
  }

  private static SheetOptions options(Paper paper) {
    return new SheetOptions("2026-05-04", METRES, paper);
  }
}
