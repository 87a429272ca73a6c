package org.jointwright.fix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Finding;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Meeting;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What lies over another slab is moved off it or cut off there. */
class OffOtherTest {
  private static Slab slab(String id, double x1, double y1, double x2, double y2) {
    return Slab.of(
        id,
        Outline.of(
            List.of(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2))));
  }

  private static List<Fix> fixes(Plan plan) {
    Layout layout = Layouts.of(plan);
    return Fixes.of(plan, layout, finding(plan));
  }

  private static Finding finding(Plan plan) {
    return found(plan).getFirst();
  }

  private static List<Finding> found(Plan plan) {
    return Checks.judge(Layouts.of(plan)).findings().stream()
        .filter(f -> f.rule().equals("M11"))
        .toList();
  }

  @Test
  void aWalkAFootOverThePatioIsMovedBackOrCutOffAndTouchesThen() {
    Plan plan =
        Plan.EMPTY.withSlabs(List.of(slab("patio", 0, 0, 96, 96), slab("walk", 30, -60, 72, 12)));
    List<Fix> fixes = fixes(plan);
    assertThat(fixes).extracting(Fix::key).contains("fix.apart.move", "fix.apart.cut");
    for (Fix fix : fixes) {
      assertThat(fix.isOfShape()).isTrue();
      Plan after = fix.edit().applyTo(plan);
      assertThat(found(after)).isEmpty();
      assertThat(after.slabs()).hasSize(2);
      assertThat(Meeting.of(after)).as(fix.key()).hasSize(1);
    }
    Fix move = fixes.stream().filter(f -> f.key().endsWith("move")).findFirst().orElseThrow();
    Plan moved = move.edit().applyTo(plan);
    assertThat(moved.slab("walk").orElseThrow().outline().ring().box().maxY())
        .isCloseTo(0, within(1e-6));
    assertThat(moved.slab("walk").orElseThrow().region().area()).isCloseTo(42 * 72, within(1e-6));
  }

  @Test
  void aCornerOverAnotherIsMovedTheShorterWayFirst() {
    Plan plan =
        Plan.EMPTY.withSlabs(List.of(slab("patio", 0, 0, 96, 96), slab("pad", 90, 80, 150, 140)));
    Plan moved = fixes(plan).getFirst().edit().applyTo(plan);
    assertThat(moved.slab("pad").orElseThrow().outline().ring().box().minX())
        .isCloseTo(96, within(1e-6));
  }

  @Test
  void whatCannotBeMovedOffWithoutLyingOverAThirdIsOnlyCut() {
    Plan plan =
        Plan.EMPTY.withSlabs(
            List.of(
                slab("patio", 0, 0, 96, 96),
                slab("drive", 0, -156, 96, -60),
                slab("walk", 30, -60, 72, 12)));
    assertThat(fixes(plan)).extracting(Fix::key).containsOnly("fix.apart.cut");
  }
}
