package org.jointwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.proof.paper.Printed;
import org.jointwright.sheet.CutSheet;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets of wild slabs prove themselves too; {@code PROOF.md} says how many of them do. */
class WildSheetsTest {
  /** One of each kind of which every sheet was proved, and two that once were not. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 9, 11, 12, 25, 38})
  void theyAreProved(long number) {
    WildSheets sheet = WildSheets.numbered(number).orElseThrow();
    assertThat(new ProofWords(sheet.proof()).lines())
        .as(sheet.slab().name())
        .noneMatch(l -> l.startsWith(" "));
  }

  /** Corners that flat diagonals, or tapes from one line, once left off by more than a step. */
  @ParameterizedTest
  @ValueSource(longs = {68, 83})
  void cornersThatHungOnFlatDiagonalsComeOutWhereTheyAre(long number) {
    WildSheets sheet = WildSheets.numbered(number).orElseThrow();
    assertThat(Comparison.differences(sheet.plan(), sheet.proof())).isEmpty();
  }

  /** A corner 2 ft off a string of 40 ft: its two sides alone leave it some inches. */
  @Test
  void aCornerThatRoundingMayPutOffIsNamedWhereNoOffsetHoldsIt() {
    Plan plan =
        ((PlanReading.ReadPlan)
                PlanReader.read(
                    """
                    {"format": "jointwright-plan", "version": 1, "slabs": [{"id": "sliver",
                      "outline": [[0, 0], [40, 0], [20, 2]]}]}
                    """))
            .plan();
    SheetOptions options =
        new SheetOptions("", Words.english(UnitSystem.FEET_INCHES), Paper.LETTER);
    List<Printed> words = PageWords.of(CutSheet.of(Layouts.of(plan), options));
    assertThat(said(words)).doesNotContain("Rounding alone");
    List<String> offset = List.of("Offsets", "from a string", "corner C 20′-0″ A–B,", "left 2′-0″");
    assertThat(words).extracting(Printed::text).containsAll(offset);
    assertThat(said(words.stream().filter(w -> !offset.contains(w.text())).toList()))
        .contains("Rounding alone may well put these corners off", "C by ");
  }

  private static String said(List<Printed> words) {
    return String.join(" ", new ProofWords(Proof.of(words).orElseThrow()).lines());
  }
}
