package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Ends that nearly reach a line reach it; ends that are on one stay. */
class LinesTest {
  @Test
  void eitherEndAloneIsDrawnToTheEdge() {
    assertThat(layout(slab().joint(100, 0.4, 100, 120)).panels()).hasSize(2);
    assertThat(layout(slab().joint(100, 0, 100, 119.6)).panels()).hasSize(2);
  }

  @Test
  void anEndIsDrawnToAnotherJoint() {
    Sketch short1 = slab().joint(100, 0, 100, 120).joint(0, 60, 99.6, 60);
    assertThat(layout(short1).panels()).hasSize(3);
    assertThat(layout(short1).loose()).isEmpty();
    Sketch short2 = slab().joint(99.6, 60, 0, 60).joint(100, 0, 100, 120);
    assertThat(layout(short2).panels()).hasSize(3);
  }

  @Test
  void anEndOnTheEdgeStaysThoughAnotherJointEndsBesideIt() {
    SlabLayout layout = layout(slab().joint(100, 0, 100, 120).joint(100.4, 0, 180, 120));
    assertThat(places(layout)).contains(new Point(100, 0), new Point(100.4, 0));
  }

  @Test
  void anEndAHairOffACornerIsOnTheCorner() {
    Sketch el = Sketch.polygon(0, 0, 240, 0, 240, 60, 100, 60, 100, 120, 0, 120);
    assertThat(places(layout(el.joint(100.05, 60, 100.05, 0))))
        .filteredOn(p -> p.distance(new Point(100, 60)) < 1)
        .containsOnly(new Point(100, 60));
  }

  @Test
  void anEndFartherOffACornerIsAMarkOfItsOwn() {
    Sketch el = Sketch.polygon(0, 0, 240, 0, 240, 60, 100, 60, 100, 120, 0, 120);
    assertThat(places(layout(el.joint(100.1, 60, 100.1, 0))))
        .anyMatch(p -> p.distance(new Point(100.1, 60)) < 1e-9);
  }

  @Test
  void fillerAHairInsideTheEdgeCutsNoSliver() {
    assertThat(layout(slab().filler(239.6, 0, 239.6, 120)).panels()).hasSize(1);
    assertThat(layout(slab().filler(238, 0, 238, 120)).panels()).hasSize(2);
  }

  @Test
  void aJointThatIsToBeCutThereIsNotLeftOut() {
    assertThat(layout(slab().joint(239.6, 0, 239.6, 120)).panels()).hasSize(2);
  }

  @Test
  void aBoxOutAHairInsideTheEdgeLeavesNoSliver() {
    Sketch atTheEdge = slab().post(12, 60, 8).bareBoxOut(0.4, 48, 24, 48, 24, 72, 0.4, 72);
    SlabLayout layout = layout(atTheEdge);
    assertThat(layout.panels()).hasSize(1);
    assertThat(layout.panels().getFirst().holes()).isEmpty();
  }

  private static List<Point> places(SlabLayout layout) {
    return layout.panels().stream().flatMap(p -> p.ring().vertices().stream()).toList();
  }

  private static Sketch slab() {
    return Sketch.rectangle(240, 120);
  }

  private static SlabLayout layout(Sketch sketch) {
    return Layouts.of(sketch.plan()).slabs().getFirst();
  }
}
