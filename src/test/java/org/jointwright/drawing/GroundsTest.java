package org.jointwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** The bands beside the slabs that show what these are against. */
class GroundsTest {
  private static final View VIEW = new View(new Point(0, 0), 1, 0);
  private static final Pens PENS = Pens.SCREEN;

  private static Slab slab(String id, double x1, double x2, double deep, Against top) {
    Outline outline =
        Outline.of(
            List.of(
                new Point(x1, -deep), new Point(x2, -deep), new Point(x2, 0), new Point(x1, 0)));
    return Slab.of(id, outline).withEdges(Map.of(2, EdgeSetting.against(top)));
  }

  private static List<Double> depths(Slab... slabs) {
    return Grounds.of(Plan.EMPTY.withSlabs(List.of(slabs)), VIEW, PENS).stream()
        .filter(Mark.Area.class::isInstance)
        .map(m -> ((Mark.Area) m).rings().getFirst().box().height())
        .toList();
  }

  @Test
  void alongOneHouseTheBandOfASmallSlabIsAsDeepAsThatOfALargeOne() {
    Slab patio = slab("patio", 0, 312, 200, Against.BUILDING);
    Slab landing = slab("landing", -20, 0, 48, Against.BUILDING);
    List<Double> beside = depths(patio, landing);
    assertThat(beside.getLast()).isCloseTo(beside.getFirst(), within(1e-9));
    assertThat(depths(landing, patio).getFirst()).isCloseTo(beside.getFirst(), within(1e-9));
    assertThat(depths(landing).getFirst()).as("alone").isLessThan(beside.getFirst());
  }

  @Test
  void apartOrAgainstSomethingElseEachHasItsOwnDepth() {
    Slab patio = slab("patio", 0, 312, 200, Against.BUILDING);
    double small = depths(slab("landing", -20, 0, 48, Against.BUILDING)).getFirst();
    assertThat(depths(patio, slab("landing", -22, -2, 48, Against.BUILDING)).getLast())
        .isCloseTo(small, within(1e-9));
    assertThat(depths(patio, slab("landing", -20, 0, 48, Against.STREET)).getLast())
        .isCloseTo(small, within(1e-9));
  }
}
