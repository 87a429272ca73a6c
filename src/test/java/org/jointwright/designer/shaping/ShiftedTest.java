package org.jointwright.designer.shaping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A typed length that changes what the tape says of a drain is told, and can be made good. */
class ShiftedTest {
  /** The right side is held by a street: the left one moves. */
  private static Desk desk(double x) {
    Slab drive =
        Slab.of(
                "drive",
                Outline.of(
                    List.of(
                        new Point(0, 0),
                        new Point(240, 0),
                        new Point(240, 360),
                        new Point(0, 360))))
            .withEdges(Map.of(1, EdgeSetting.against(Against.STREET)));
    FixedObject drain =
        new FixedObject(
            "drain 1",
            "drive",
            FixedKind.DRAIN,
            new FixedShape.Round(new Point(x, 100), Length.inches(16), Kept.NOTHING),
            Kept.NOTHING);
    Desk begun = Desk.begun(Plan.EMPTY.withSlabs(List.of(drive)));
    return SideLength.set(
            begun.edited(new FixedEdit.Add(drain)), Ref.outline("drive", 0), Length.inches(244))
        .orElseThrow();
  }

  @Test
  void aSideThatMovesAwayFromADrainIsTold() {
    List<Shifted> all = Shifted.last(desk(75), "drive");
    assertThat(all).hasSize(1);
    assertThat(all.getFirst().was().away()).isCloseTo(75, within(1e-9));
    assertThat(all.getFirst().now().away()).isCloseTo(79, within(1e-9));
    Desk back = all.getFirst().back(desk(75));
    Point at = back.plan().fixed().getFirst().shape().ring().box().centre();
    assertThat(at.distance(new Point(71, 100))).isLessThan(1e-9);
    assertThat(back.undone().plan()).isEqualTo(desk(75).plan());
    assertThat(Shifted.last(back, "drive")).as("once only").isEmpty();
  }

  @Test
  void oneThatStandsNearerTheSideThatStaysIsNot() {
    assertThat(Shifted.last(desk(165), "drive")).isEmpty();
  }
}
