package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Panel;
import org.jointwright.joint.PanelMeasures;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class RectanglesTest {
  private static SlabLayout laid(double width, double height) {
    Outline outline =
        Outline.of(
            List.of(
                new Point(0, 0),
                new Point(width, 0),
                new Point(width, height),
                new Point(0, height)));
    Layout layout = LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(Slab.of("slab", outline))));
    return layout.slabs().getFirst();
  }

  /** Source: trade journal answer on control joints in a drive, 15 x 18 ft, 4 in: 9 x 7.5 ft. */
  @Test
  void fifteenByEighteenFeetIsHalvedBothWays() {
    SlabLayout slab = laid(15 * 12, 18 * 12);
    assertThat(slab.panels()).hasSize(4);
    for (Panel p : slab.panels()) {
      PanelMeasures m = PanelMeasures.of(p);
      assertThat(m.longSide()).isCloseTo(9 * 12, within(0.01));
      assertThat(m.shortSide()).isCloseTo(7.5 * 12, within(0.01));
    }
  }

  @Test
  void slabThatNeedsNoJointGetsNone() {
    assertThat(laid(108, 108).joints()).isEmpty();
  }

  @Test
  void jointsCarryNoDepthThatNobodyGave() {
    assertThat(laid(240, 480).joints()).isNotEmpty().allMatch(j -> j.depth().isEmpty());
  }

  @Test
  void samePlanGivesTheSameLayoutTwice() {
    assertThat(laid(260, 410)).isEqualTo(laid(260, 410));
  }
}
