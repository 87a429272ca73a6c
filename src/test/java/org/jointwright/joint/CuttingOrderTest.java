package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.junit.jupiter.api.Test;

/** Across the long way first, from one end to the other, then along it: common practice. */
class CuttingOrderTest {
  @Test
  void aWideSlabIsCutAcrossFromTheLeftThenAlongFromBelow() {
    Sketch slab =
        Sketch.rectangle(240, 120)
            .joint(0, 80, 240, 80)
            .joint(180, 0, 180, 120)
            .joint(0, 40, 240, 40)
            .joint(60, 120, 60, 0)
            .joint(120, 0, 120, 120);
    assertThat(order(slab)).containsExactly("J4", "J5", "J2", "J3", "J1");
  }

  @Test
  void aTallSlabIsCutAcrossFromBelowThenAlongFromTheLeft() {
    Sketch slab =
        Sketch.rectangle(120, 240)
            .joint(80, 0, 80, 240)
            .joint(0, 180, 120, 180)
            .joint(40, 0, 40, 240)
            .joint(120, 60, 0, 60)
            .joint(0, 120, 120, 120);
    assertThat(order(slab)).containsExactly("J4", "J5", "J2", "J3", "J1");
  }

  @Test
  void aSquareSlabIsCutAsAWideOne() {
    assertThat(order(Sketch.rectangle(120, 120).joint(0, 60, 120, 60).joint(60, 0, 60, 120)))
        .containsExactly("J2", "J1");
  }

  @Test
  void whatStandsInOneLineIsCutFromItsLowerOrLeftEnd() {
    // The lower one stands to the right by less than an inch counts.
    assertThat(
            order(Sketch.rectangle(240, 120).joint(100, 90, 100, 120).joint(100.4, 0, 100.4, 30)))
        .containsExactly("J2", "J1");
    assertThat(order(Sketch.rectangle(240, 120).joint(101, 0, 101, 30).joint(100, 90, 100, 120)))
        .containsExactly("J2", "J1");
    assertThat(
            order(Sketch.rectangle(120, 240).joint(90, 100, 120, 100).joint(0, 100.4, 30, 100.4)))
        .containsExactly("J2", "J1");
  }

  @Test
  void whatRunsAtFortyFiveDegreesIsCutWithWhatRunsSideways() {
    assertThat(order(Sketch.rectangle(240, 120).joint(0, 0, 60, 60).joint(120, 0, 120, 120)))
        .containsExactly("J2", "J1");
    assertThat(order(Sketch.rectangle(240, 120).joint(10, 0, 69, 60).joint(5, 0, 5, 120)))
        .containsExactly("J2", "J1");
    assertThat(order(Sketch.rectangle(240, 120).joint(120, 0, 120, 120).joint(10, 0, 69, 60)))
        .containsExactly("J2", "J1");
  }

  private static List<String> order(Sketch sketch) {
    Slab slab = sketch.plan().slabs().getFirst();
    return CuttingOrder.of(slab, Straights.of(slab.joints())).stream()
        .map(r -> r.joints().getFirst())
        .map(Joint::id)
        .toList();
  }
}
