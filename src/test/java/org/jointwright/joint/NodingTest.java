package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Lines that are meant to meet in one point do, and what is listed twice cuts once. */
class NodingTest {
  /** Within a node’s reach in one of two ways: from two places at once, or from each by itself. */
  private static final double HAIR = 0.0034;

  @Test
  void threeLinesThroughOnePointButForAHairCutSixPanels() {
    for (double run : new double[] {60, 120}) {
      double[] rising = {120 - run, 0, 120 + run, 120};
      double[] falling = {120 - run, 120, 120 + run, 0};
      for (double off : new double[] {HAIR, -HAIR, HAIR / 2, -HAIR / 2}) {
        double[] upright = {120 + off, 0, 120 + off, 120};
        double[] level = {0, 60 + off / 2, 240, 60 + off / 2};
        double[] lower = {0, 60 + off, 240, 60 + off};
        for (double[] third : run == 60 ? List.of(upright, lower) : List.of(upright, level)) {
          assertThat(panels(rising, falling, third)).isEqualTo(6);
          assertThat(panels(third, rising, falling)).isEqualTo(6);
          assertThat(panels(falling, third, rising)).isEqualTo(6);
        }
      }
    }
  }

  @Test
  void fartherApartTheyCutATrianglePanel() {
    double[] rising = {60, 0, 180, 120};
    double[] falling = {60, 120, 180, 0};
    assertThat(panels(rising, falling, new double[] {120.5, 0, 120.5, 120})).isEqualTo(7);
  }

  @Test
  void aJointListedTwiceCutsOnceWhicheverWayItRuns() {
    for (double[] line :
        List.of(
            new double[] {100, 0, 100, 120},
            new double[] {0, 60, 240, 60},
            new double[] {0, 0, 240, 120},
            new double[] {0, 120, 240, 0})) {
      double[] back = {line[2], line[3], line[0], line[1]};
      for (double[] twin : List.of(line, back)) {
        SlabLayout layout = layout(line, twin);
        assertThat(layout.panels()).hasSize(2);
        assertThat(layout.panels()).allMatch(p -> p.holes().isEmpty());
        assertThat(layout.panels().stream().mapToDouble(Panel::area).sum())
            .isCloseTo(240 * 120, within(1e-6));
      }
    }
  }

  @Test
  void jointsThatLieOnEachOtherInPartCutOnce() {
    SlabLayout layout = layout(new double[] {100, 0, 100, 80}, new double[] {100, 40, 100, 120});
    assertThat(layout.panels()).hasSize(2);
    assertThat(layout.panels()).allMatch(p -> p.holes().isEmpty());
    assertThat(layout.panels().getFirst().outer())
        .extracting(Side::source)
        .contains(new Source.OnJoint("J1"), new Source.OnJoint("J2"));
  }

  @Test
  void anOpeningAHairOffTheEdgeOpensOntoIt() {
    Sketch slab = Sketch.rectangle(240, 120).opening(100, 0.003, 140, 40, 60, 40);
    List<Panel> panels = Layouts.of(slab.plan()).slabs().getFirst().panels();
    assertThat(panels).hasSize(1);
    assertThat(panels.getFirst().holes()).isEmpty();
    assertThat(panels.getFirst().ring().vertices()).contains(new Point(140, 40));
  }

  @Test
  void aNotchAHairOffAnOpeningOpensOntoIt() {
    // Slanting from the left, or steep: whichever of the lines begins farther to the left.
    for (double[] x : List.of(new double[] {80, 104, 60}, new double[] {122, 120, 118})) {
      Sketch slab =
          Sketch.polygon(0, 0, 240, 0, 240, 120, x[0], 120, x[1], 60.003, x[2], 120, 0, 120)
              .opening(100, 40, 140, 40, 140, 60, 100, 60);
      List<Panel> panels = Layouts.of(slab.plan()).slabs().getFirst().panels();
      assertThat(panels).hasSize(1);
      assertThat(panels.getFirst().holes()).isEmpty();
    }
  }

  private static int panels(double[]... joints) {
    return layout(joints).panels().size();
  }

  private static SlabLayout layout(double[]... joints) {
    Sketch slab = Sketch.rectangle(240, 120);
    for (double[] j : joints) {
      slab.joint(j);
    }
    return Layouts.of(slab.plan()).slabs().getFirst();
  }
}
