package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
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

  /** Square joints meet the slanted side of these at 45 degrees or less, so no grid is sound. */
  @ParameterizedTest
  @CsvSource({"0 0 27 0 0 26.5", "0 0 33 0 33 21.4 24.6 21.4"})
  void whatNoGridFitsIsLaidByTheRules(String feet) {
    double[] corners = Arrays.stream(feet.split(" ")).mapToDouble(Double::parseDouble).toArray();
    Slab slab = Slab.of("slab", Symmetric.outline(corners));
    Layout layout = LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(slab)));
    assertThat(Checks.judge(layout).of(Severity.MUST)).isEmpty();
  }

  /**
   * A lot of some 25 panels with a corner of 41 degrees, a drive that widens to its garage, one
   * with a bay whose ends are slanted, all laid at once; with what each may cost at most, ft.
   */
  @ParameterizedTest
  @CsvSource({
    "0 0 60 0 18 36 0 36, 370",
    "0 0 10 0 12 20 30 34 30 52 0 52, 320",
    "0 0 11 0 11 12 20 21 20 36 11 45 11 60 0 60, 230"
  })
  void whatNoGridFitsIsSoundAtFirstSight(String feet, double cost) {
    double[] corners = Arrays.stream(feet.split(" ")).mapToDouble(Double::parseDouble).toArray();
    Slab slab = Slab.of("slab", Symmetric.outline(corners));
    Layout layout = LayoutEngine.first(Plan.EMPTY.withSlabs(List.of(slab)));
    assertThat(Checks.judge(layout).of(Severity.MUST)).isEmpty();
    assertThat(Figures.of(layout).cost()).isLessThan(cost);
  }
}
