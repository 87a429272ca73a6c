package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.jointwright.check.Finding;
import org.jointwright.check.judge.Checks;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.junit.jupiter.api.Test;

/**
 * Two lines that a hand locked meet amid a drive with a flare, a cleanout at the end of one: rungs
 * across what is left of it touch in a point, and a panel between them would have a side of no
 * length.
 */
class TouchingRungsTest {
  private static final Path FILE =
      Path.of("src/test/resources/cases/locked/two-locked-lines-that-meet.jointwright.json");

  @Test
  void theRestIsLaidRoundLockedLinesThatMeet() {
    Plan plan = ((PlanReading.ReadPlan) PlanReader.read(FILE)).plan();
    Layout layout = LayoutEngine.lay(plan);
    List<String> broken =
        Checks.judge(plan, layout).findings().stream().map(Finding::rule).distinct().toList();
    assertThat(broken).doesNotContain("M6", "M8", "M9");
    assertThat(layout.plan().slabs().getFirst().lockedJoints()).hasSize(2);
  }
}
