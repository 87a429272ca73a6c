package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.measure.UnitSystem;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Ink;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What an owner is shown and what not. */
class OwnersPlanTest {
  private static Page page(String name) {
    List<Page> pages =
        LaidPlans.pages(name, Kind.OWNER, Words.english(UnitSystem.FEET_INCHES), Paper.LETTER);
    assertThat(pages).hasSize(1);
    return pages.getFirst();
  }

  @Test
  void slabIsToldByNameThicknessAndSizes() {
    assertThat(PageTexts.of(page("rect_drive_20x40_4in")))
        .contains("4″ thick", "20′-0″", "40′-0″", "800 ft²", "What you get", "Price");
  }

  @Test
  void sizesAreThoseOfTheWholeSlabNotOfASide() {
    // An L of 36 ft by 44 ft: its longest side one way is shorter than the slab is.
    assertThat(PageTexts.of(page("L_drive_36x44_4in"))).contains("36′-0″", "44′-0″");
  }

  @Test
  void jointsHaveNoNumbersAndCornersNoLetters() {
    assertThat(PageTexts.of(page("multi_drive_approach_walk")))
        .noneMatch(t -> t.matches("[0-9]+|[A-Z]") && !t.equals("N") && !t.equals("0"));
  }

  @Test
  void finishIsSaidWhereThePlanSaysIt() {
    assertThat(PageTexts.of(page("drive-walk-and-pad.jointwright")))
        .contains("Finish, drive, walk", "broom", "Finish, pad", "exposed aggregate")
        .doesNotContain("Finish");
    assertThat(PageTexts.of(page("rect_drive_20x40_4in"))).contains("Finish");
  }

  @Test
  void itIsPrintedInColours() {
    assertThat(page("rect_drive_20x40_4in").ink()).isEqualTo(Ink.COLOURED);
  }
}
