package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a slab mirrors at a line, so do its joints (common practice, no source). */
class SymmetryTest {
  private static final Mirror UPRIGHT = new Mirror(new Point(0, 0), new Point(0, 1));

  static Set<String> all() {
    return Symmetric.all().keySet();
  }

  @ParameterizedTest
  @MethodSource("all")
  void jointsMirrorWhereTheSlabDoes(String name) {
    Slab slab = Slab.of("slab", Symmetric.all().get(name));
    Layout layout = LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(slab)));
    assertThat(Checks.judge(layout).of(Severity.MUST)).as(name).isEmpty();
    assertThat(Symmetric.isEven(layout, UPRIGHT)).as(name).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plus_pad_30x30_4in",
        "hammerhead_12x36_bar50_5in",
        "trapezoid_16to28x30_4in",
        "semicircle_r12_4in",
        "approach_arc_returns_20_r6_6in"
      })
  void jointsOfCasesMirrorAtTheirUprightMiddle(String name) {
    Layout layout = LayoutEngine.lay(Cases.plan(name));
    Box box = layout.plan().slabs().getFirst().outline().ring().box();
    Point middle = new Point((box.minX() + box.maxX()) / 2, box.minY());
    assertThat(Symmetric.isEven(layout, new Mirror(middle, new Point(0, 1)))).as(name).isTrue();
  }

  /** The check can fail: a joint off the middle is not even. */
  @ParameterizedTest
  @ValueSource(strings = {"L_drive_36x44_4in"})
  void anUnevenLayoutIsSeen(String name) {
    assertThat(Symmetric.isEven(LayoutEngine.lay(Cases.plan(name)), UPRIGHT)).isFalse();
  }
}
