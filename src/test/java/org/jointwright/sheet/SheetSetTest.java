package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.sheet.owner.OwnersPlan;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** Sheets bound together are numbered through, and the first page says what there is. */
class SheetSetTest {
  private static final Plan DRIVE = LaidPlans.plan("multi_drive_approach_walk");
  private static final SheetOptions OPTIONS =
      new SheetOptions("", Words.english(UnitSystem.FEET_INCHES), Paper.LETTER, List.of(), true);

  private static SheetSet set(int count) {
    Layout layout = Layouts.of(DRIVE);
    Takeoff takeoff = Takeoff.of(layout, UnitSystem.FEET_INCHES);
    List<Sheet> all =
        List.of(
            OwnersPlan.sheet(layout, takeoff, OPTIONS),
            CutSheet.sheet(layout, OPTIONS),
            OrderSheet.sheet(DRIVE, takeoff, OPTIONS));
    return SheetSet.of(all.subList(0, count), DRIVE.job(), OPTIONS);
  }

  @Test
  void pagesAreNumberedThrough() {
    SheetSet set = set(3);
    int all = set.pages().size();
    assertThat(all).isGreaterThan(3);
    for (int i = 0; i < all; i++) {
      assertThat(PageTexts.of(set.pages().get(i))).contains(i + 1 + " of " + all);
    }
  }

  @Test
  void firstPageListsTheSheetsAndWhereTheyBegin() {
    SheetSet set = set(3);
    assertThat(PageTexts.of(set.pages().getFirst()))
        .contains("Sheets: 1 Owner’s plan,  2 Cut sheet,  3–4 Order sheet");
    assertThat(PageTexts.of(set.pages().get(1))).noneMatch(t -> t.startsWith("Sheets:"));
    assertThat(set.entries().stream().map(SheetSet.Entry::first)).containsExactly(1, 2, 3);
  }

  @Test
  void howAmountsWereWorkedOutIsSaidOnlyWhereItIsWishedFor() {
    SheetOptions bare = new SheetOptions("", OPTIONS.words(), OPTIONS.paper());
    assertThat(orders(bare)).noneMatch(t -> t.contains("how it was worked out"));
    assertThat(orders(OPTIONS)).contains("Stone: how it was worked out");
  }

  private static List<String> orders(SheetOptions options) {
    Takeoff takeoff = Takeoff.of(Layouts.of(DRIVE), UnitSystem.FEET_INCHES);
    return OrderSheet.of(DRIVE, takeoff, options).stream()
        .flatMap(p -> PageTexts.of(p).stream())
        .toList();
  }

  @Test
  void oneSheetAloneHasNoList() {
    assertThat(PageTexts.of(set(1).pages().getFirst())).noneMatch(t -> t.startsWith("Sheets:"));
  }
}
