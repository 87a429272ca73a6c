package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RoundPlansTest {
  private static final long SEED = 2;

  /** One invented plan of each kind is laid by every rule that must hold. */
  @ParameterizedTest
  @EnumSource(
      value = RoundPlans.Kind.class,
      mode = EnumSource.Mode.EXCLUDE,
      // These take seconds each.
      names = {"COLUMN_GRID", "TWO_POSTS"})
  void roundWorkAndObjectsAreLaidByTheRules(RoundPlans.Kind kind) {
    String name = kind + " of seed " + SEED;
    Layout layout = LayoutEngine.lay(RoundPlans.of(kind, SEED));
    assertThat(Checks.judge(layout).of(Severity.MUST)).as(name).isEmpty();
    assertThat(layout.slabs()).allSatisfy(s -> assertThat(s.loose()).as(name).isEmpty());
    assertThat(layout.slabs().stream().map(SlabLayout::boxOuts).flatMap(b -> b.stream()).count())
        .as("box-outs of " + name)
        .isEqualTo(layout.plan().fixed().size());
  }
}
