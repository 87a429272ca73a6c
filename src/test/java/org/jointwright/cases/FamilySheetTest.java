package org.jointwright.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.sheet.page.Page;
import org.junit.jupiter.api.Test;

/** The sheets to be looked at show each case twice, and nothing off the paper. */
class FamilySheetTest {
  private static final List<OpenCase> UNITS =
      OpenCase.all().stream().filter(c -> c.family().equals("units")).toList();

  @Test
  void eachCaseIsDrawnBesideTheBestKnown() {
    Page page = FamilySheet.page(UNITS);
    assertThat(page.marks().stream().filter(m -> m instanceof Mark.Group))
        .hasSize(2 * UNITS.size());
    assertThat(page.marks().stream().filter(m -> m instanceof Mark.Words))
        .extracting(m -> ((Mark.Words) m).text())
        .anyMatch(t -> t.startsWith("units_mm_6000x9500"));
  }

  @Test
  void everyDrawingIsOnThePaper() {
    Page page = FamilySheet.page(UNITS);
    assertThat(page.paper().width()).isGreaterThan(2 * 88);
    page.marks().stream()
        .flatMap(m -> m instanceof Mark.Group g ? lines(g).stream() : List.<Mark.Line>of().stream())
        .forEach(
            l -> {
              assertThat(l.path().start().x()).isBetween(0.0, page.paper().width());
              assertThat(l.path().start().y()).isBetween(0.0, page.paper().height());
            });
  }

  private static List<Mark.Line> lines(Mark.Group group) {
    return group.marks().stream()
        .flatMap(
            m ->
                switch (m) {
                  case Mark.Group g -> lines(g).stream();
                  case Mark.Line l -> List.of(l).stream();
                  case Mark.Area a -> List.<Mark.Line>of().stream();
                  case Mark.Words w -> List.<Mark.Line>of().stream();
                })
        .toList();
  }
}
