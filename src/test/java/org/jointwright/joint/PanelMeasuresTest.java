package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.check.Sketch;
import org.junit.jupiter.api.Test;

class PanelMeasuresTest {
  @Test
  void aRectangleMeasuresItself() {
    PanelMeasures m = of(Sketch.rectangle(50, 80));
    assertThat(m.area()).isCloseTo(4000, within(1e-9));
    assertThat(m.longSide()).isCloseTo(80, within(1e-9));
    assertThat(m.shortSide()).isCloseTo(50, within(1e-9));
    assertThat(m.aspect()).isCloseTo(1.6, within(1e-9));
    assertThat(m.width()).isCloseTo(50, within(1e-9));
    assertThat(m.fill()).isCloseTo(1, within(1e-9));
    assertThat(m.corners()).hasSize(4);
  }

  @Test
  void aTriangleFillsHalfItsRectangle() {
    assertThat(of(Sketch.polygon(0, 0, 80, 0, 40, 50)).fill()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void whatIsOpenIsNoPartOfTheArea() {
    PanelMeasures m = of(Sketch.rectangle(50, 80).opening(10, 10, 30, 10, 30, 30, 10, 30));
    assertThat(m.area()).isCloseTo(3600, within(1e-9));
    assertThat(m.fill()).isCloseTo(0.9, within(1e-9));
  }

  private static PanelMeasures of(Sketch sketch) {
    return PanelMeasures.of(Layouts.of(sketch.plan()).slabs().getFirst().panels().getFirst());
  }
}
