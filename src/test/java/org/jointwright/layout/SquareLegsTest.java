package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An L with legs wider than the spacing, where slanted joints are a few feet shorter. */
class SquareLegsTest {
  /** The sine of an eighth of a degree. */
  private static final double SQUARE = 0.002;

  @ParameterizedTest
  @ValueSource(doubles = {20.75, 22.5})
  void jointsStandSquareThoughSlantedOnesAreShorter(double up) {
    Slab slab =
        Slab.of("slab", Symmetric.outline(0, 0, 24, 0, 24, 11.5, 11.5, 11.5, 11.5, up, 0, up));
    Layout layout = LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(slab)));
    assertThat(Checks.judge(layout).of(Severity.MUST)).isEmpty();
    assertThat(layout.slabs().getFirst().joints())
        .isNotEmpty()
        .allSatisfy(
            j -> {
              Point u = j.path().edges().getFirst().direction(0);
              assertThat(Math.abs(u.x() * u.y())).isLessThan(SQUARE);
            });
  }
}
