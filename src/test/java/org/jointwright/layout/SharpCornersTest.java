package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slabs with sharp corners, where no grid fits. */
class SharpCornersTest {
  /**
   * A joint that the others can do without is left out: the panels of these would each take one
   * more if joints were only added and shifted.
   */
  @ParameterizedTest
  @CsvSource({"acute_corner_lot_55deg_5in, 7, 92", "triangle_24_26_20_4in, 5, 47"})
  void noJointIsLaidThatTheOthersCanDoWithout(String name, int panels, double cost) {
    Layout layout = LayoutEngine.lay(Cases.plan(name));
    SlabFigures figures = Figures.of(layout).slabs().getFirst();
    assertThat(Checks.judge(layout).of(Severity.MUST)).isEmpty();
    assertThat(layout.slabs().getFirst().panels()).hasSize(panels);
    assertThat(figures.cost()).isLessThan(cost);
  }
}
