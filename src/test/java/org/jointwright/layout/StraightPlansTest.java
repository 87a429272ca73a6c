package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.figure.Figures;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StraightPlansTest {
  private static final long[] SEEDS = {3, 4};

  /** Two invented slabs of each family are laid whole and by every rule that must hold. */
  @ParameterizedTest
  @EnumSource(
      value = StraightPlans.Kind.class,
      mode = EnumSource.Mode.EXCLUDE,
      // Box-outs are chosen by the layouts that come of them: seconds each.
      names = {"POST", "DRAIN"})
  void slabsOfEveryFamilyAreLaidByTheRules(StraightPlans.Kind kind) {
    for (long seed : SEEDS) {
      Plan plan = StraightPlans.of(kind, seed);
      assertThat(Swept.faults(plan, LayoutEngine.first(plan)))
          .as(kind + " of seed " + seed)
          .isEmpty();
    }
  }

  /** With all the effort they are laid by the rules as well, and cost no more. */
  @ParameterizedTest
  @CsvSource({"RECTANGLE, 4", "L, 4", "STRIP, 4", "OUT_OF_SQUARE, 4", "ADJOINING, 4", "JOG, 4"})
  void allTheEffortCostsNoMore(StraightPlans.Kind kind, long seed) {
    Plan plan = StraightPlans.of(kind, seed);
    Layout full = LayoutEngine.lay(plan);
    assertThat(Swept.faults(plan, full)).as(kind + " of seed " + seed).isEmpty();
    assertThat(Figures.of(plan, full).cost())
        .isLessThanOrEqualTo(1.01 * Figures.of(plan, LayoutEngine.first(plan)).cost() + 0.01);
  }
}
