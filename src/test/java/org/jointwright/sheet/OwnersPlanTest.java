package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Slab;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Ink;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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
  void aWalkThatBendsIsToldAlongItsMiddle() {
    assertThat(PageTexts.of(page("patio-landing-and-walk.jointwright")))
        .contains("walk", "3′-6″ wide, 21′-0″ long")
        .doesNotContain("19′-5⅛″");
  }

  @Test
  void aSlabTooSmallForSizeLinesIsSizedWithItsName() {
    assertThat(PageTexts.of(page("patio-landing-and-walk.jointwright")))
        .contains("landing", "5′-0″ × 4′-0″");
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everySlabIsNamedAndSized(String name) {
    List<String> texts = PageTexts.of(page(name));
    for (Slab slab : LaidPlans.plan(name).slabs()) {
      assertThat(texts).as("slab %s of %s", slab.id(), name).contains(slab.id());
    }
    long sizes = texts.stream().filter(t -> t.contains("″ × ") || t.endsWith("″ long")).count();
    long lines = texts.stream().filter(t -> t.matches("[0-9]+′-[0-9].*″")).count();
    assertThat(2 * sizes + lines)
        .as("sizes on %s: %s", name, texts)
        .isGreaterThanOrEqualTo(2L * LaidPlans.plan(name).slabs().size());
  }

  static List<String> plans() {
    return LaidPlans.names();
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
