package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** Paper with findings still open says so; clean paper says nothing of it. */
class OpenFindingsTest {
  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                  "pad",
                  Outline.of(
                      List.of(
                          new Point(0, 0),
                          new Point(100, 0),
                          new Point(100, 100),
                          new Point(0, 100))))));

  private static String said(List<String> open) {
    SheetOptions options =
        new SheetOptions("", Words.english(UnitSystem.FEET_INCHES), Paper.LETTER, open, false);
    return String.join(" ", PageTexts.of(CutSheet.of(Layouts.of(PLAN), options).getFirst()));
  }

  @Test
  void howManyAreOpenAndOfWhichRules() {
    assertThat(said(List.of("S5", "M1", "S5"))).contains("3 findings are open: M1, S5. Look at");
    assertThat(said(List.of("S5"))).contains("1 finding is open: S5.");
  }

  @Test
  void nothingIsSaidOfACleanPlan() {
    assertThat(said(List.of())).doesNotContain("open");
  }
}
