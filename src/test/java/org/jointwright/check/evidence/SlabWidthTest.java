package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.check.Sketch;
import org.junit.jupiter.api.Test;

class SlabWidthTest {
  @Test
  void aSlabIsAsWideAsItsNarrowWayWhateverJointsCutIt() {
    Judged strip = Evidence.of(Sketch.rectangle(200, 30).joint(20, 0, 20, 30).joint(30, 0, 30, 30));
    assertThat(strip.faces()).hasSize(3);
    strip
        .faces()
        .forEach(f -> assertThat(SlabWidth.at(f, strip.concrete())).isCloseTo(30, within(1e-6)));
  }

  @Test
  void itIsMeasuredWhereThePanelIs() {
    // A wide part at the left and a tongue of 20 at the right.
    Judged slab =
        Evidence.of(
            Sketch.polygon(0, 0, 100, 0, 100, 40, 200, 40, 200, 60, 100, 60, 100, 100, 0, 100)
                .joint(100, 40, 100, 60));
    assertThat(slab.faces())
        .extracting(f -> Math.round(SlabWidth.at(f, slab.concrete())))
        .containsExactlyInAnyOrder(100L, 20L);
  }

  @Test
  void openingsAndBoxOutsEndIt() {
    Judged slab =
        Evidence.of(Sketch.rectangle(200, 100).opening(0.5, 40, 199.5, 40, 199.5, 99, 0.5, 99));
    assertThat(SlabWidth.at(slab.faces().getFirst(), slab.concrete())).isCloseTo(40, within(0.1));
  }
}
