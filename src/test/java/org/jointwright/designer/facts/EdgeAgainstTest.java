package org.jointwright.designer.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** A side along another slab is said to be against that, not against open ground. */
class EdgeAgainstTest {
  private static Point at(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private static Slab box(String id, double x, double y, double wide, double deep) {
    return Slab.of(
        id,
        Outline.of(List.of(at(x, y), at(x + wide, y), at(x + wide, y + deep), at(x, y + deep))));
  }

  private static String against(Plan plan, String slab, int edge) {
    EdgeFacts facts =
        new EdgeFacts(
            Desk.begun(plan), Ref.outline(slab, edge), Words.english(UnitSystem.FEET_INCHES));
    return facts.facts().orElseThrow().rows().stream()
        .filter(r -> r.id().equals("edge-against"))
        .map(Row.Choice.class::cast)
        .map(c -> c.options().get(c.chosen()))
        .findFirst()
        .orElseThrow();
  }

  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              box("drive", 0, 0, 20, 30), box("walk", 20, 10, 12, 4), box("slab 2", 0, 30, 20, 5)));

  @Test
  void whollyAndPartlyAlongASlab() {
    assertThat(against(PLAN, "walk", 3)).isEqualTo("slab drive");
    assertThat(against(PLAN, "drive", 1)).isEqualTo("partly slab walk");
    assertThat(against(PLAN, "drive", 2)).as("its name says that it is one").isEqualTo("slab 2");
    assertThat(against(PLAN, "drive", 0)).isEqualTo("open ground");
  }

  @Test
  void justBesideOneIsOpenGround() {
    Plan apart =
        Plan.EMPTY.withSlabs(List.of(box("drive", 0, 0, 20, 30), box("walk", 20.05, 10, 12, 4)));
    assertThat(against(apart, "walk", 3)).isEqualTo("open ground");
    Plan near =
        Plan.EMPTY.withSlabs(List.of(box("drive", 0, 0, 20, 30), box("walk", 20.03, 10, 12, 4)));
    assertThat(against(near, "walk", 3)).isEqualTo("slab drive");
  }
}
