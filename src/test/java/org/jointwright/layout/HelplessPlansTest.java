package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans that no layout can meet: the least broken one, and a finding that says why. */
class HelplessPlansTest {
  private static final long SEED = 5;

  private static Outline rectangle(double left, double low, double right, double high) {
    return Outline.of(
        List.of(
            new Point(left, low),
            new Point(right, low),
            new Point(right, high),
            new Point(left, high)));
  }

  private static Layout lay(Slab slab) {
    return LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(slab)));
  }

  private static Joint locked(String id, double x1, double y1, double x2, double y2) {
    Path path = Path.straight(new Point(x1, y1), new Point(x2, y2));
    return Joint.of(id, JointKind.CONTRACTION, path, Purpose.SPACING).withLocked(true);
  }

  /** Zones right across a slab 12 ft wide where joints stand 10 ft apart at most. */
  @ParameterizedTest
  @ValueSource(ints = {24, 48})
  void zoneRightAcrossASlabGetsSquareJointsEitherSideAndIsNamed(int wide) {
    double low = 100 + new Random(SEED + wide).nextInt(40);
    Slab slab =
        Slab.of("pad", rectangle(0, 0, 144, 288))
            .withKeepClear(List.of(KeepClear.of("gas line", rectangle(-12, low, 156, low + wide))));
    String name = wide + " in wide of seed " + SEED;
    Layout layout = lay(slab);
    Judgement judgement = Checks.judge(layout);
    // One panel holds the zone, 12 ft long: no other need break anything, and none twice.
    assertThat(judgement.of(Severity.MUST))
        .as(name)
        .extracting(Finding::rule)
        .containsExactly("M1");
    assertThat(judgement.findings()).extracting(Finding::key).contains("check.c1.zone");
    assertThat(layout.slabs().getFirst().joints())
        .as(name)
        .isNotEmpty()
        .allSatisfy(
            j -> {
              Point u = j.path().end().minus(j.path().start()).unit();
              assertThat(Math.min(Math.abs(u.x()), Math.abs(u.y()))).isLessThan(1e-3);
            });
  }

  @Test
  void lockedJointsThatCrossAreEachLaidOnce() {
    Slab slab =
        Slab.of("pad", rectangle(0, 0, 240, 240))
            .withLaid(
                List.of(locked("A", 0, 48, 240, 192), locked("B", 0, 144, 240, 96)), List.of());
    Layout layout = lay(slab);
    assertThat(Checks.judge(layout).of(Severity.MUST))
        .extracting(Finding::rule)
        .doesNotContain("M6", "M9");
    assertThat(Checks.judge(layout).findings())
        .extracting(Finding::key)
        .contains("check.c1.lockedSharp");
  }
}
