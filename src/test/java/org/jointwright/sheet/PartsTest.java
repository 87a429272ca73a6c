package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jointwright.joint.Numbering;
import org.jointwright.measure.UnitSystem;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** A plan too crowded for its page is drawn in parts that meet along match lines. */
class PartsTest {
  private static final String YARD = "yard_200x150_three_openings_8in";

  private static List<Page> pages() {
    return LaidPlans.pages(YARD, Kind.CUT, Words.english(UnitSystem.METRIC), Paper.LETTER);
  }

  @Test
  void planIsTheKeyToItsParts() {
    assertThat(PageTexts.of(pages().getFirst())).contains("part 1", "part 2").doesNotContain("87");
    assertThat(PageTexts.of(pages().get(1))).contains("Part 1 of 2", "part 2");
    assertThat(PageTexts.of(pages().get(2))).contains("Part 2 of 2", "part 1");
  }

  @Test
  void everyNumberStandsInAPart() {
    Set<String> numbers = new TreeSet<>(PageTexts.of(pages().get(1)));
    numbers.addAll(PageTexts.of(pages().get(2)));
    assertThat(numbers)
        .containsAll(
            Numbering.of(LaidPlans.plan(YARD)).items().stream()
                .map(i -> String.valueOf(i.number()))
                .toList());
  }

  @Test
  void cornersAreLetteredOnTheKeyAndOnTheirPart() {
    assertThat(PageTexts.of(pages().getFirst())).contains("A", "B", "C", "D", "R");
    assertThat(PageTexts.of(pages().get(1))).contains("C", "D").doesNotContain("A", "B");
    assertThat(PageTexts.of(pages().get(2))).contains("A", "B").doesNotContain("C", "D");
  }

  @Test
  void planThatHasRoomIsNotParted() {
    List<Page> pages =
        LaidPlans.pages(
            "rect_drive_20x40_4in", Kind.CUT, Words.english(UnitSystem.FEET_INCHES), Paper.LETTER);
    assertThat(PageTexts.of(pages.getFirst())).noneMatch(t -> t.startsWith("part "));
  }
}
