package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Kidneys: bands with round ends, where no line runs square to all that it meets. */
class KidneysTest {
  private static void assertClean(Plan plan, String name) {
    Layout layout = LayoutEngine.lay(plan);
    assertThat(Checks.judge(layout).of(Severity.MUST)).as(name).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 5, 6})
  void kidneysKeepEveryRule(long seed) {
    assertClean(CurvedPlans.of(CurvedPlans.Kind.KIDNEY, seed), "kidney of seed " + seed);
  }

  /** Coarse chords made the panels of its ends shorter by an inch than the checks find them. */
  @Test
  void panelsInRoundEndsAreMeasuredAsTheChecksDo() {
    assertClean(CurvedPlans.plan(CurvedPlans.kidney(120, 216, 80)), "10 ft round, 18 ft wide");
  }
}
