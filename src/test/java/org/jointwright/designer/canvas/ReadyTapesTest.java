package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.designer.ready.Addition;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.SetDown;
import org.jointwright.drawing.Mark;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** The two figures of what is in the hand never lie over each other, nor over what they are of. */
class ReadyTapesTest {
  private static final Words WORDS = Words.english(UnitSystem.METRIC);

  private static Point at(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private static final Plan WALK =
      Plan.EMPTY.withSlabs(
          List.of(Slab.of("walk", Outline.of(List.of(at(0, 0), at(40, 0), at(40, 4), at(0, 4))))));

  @Test
  void figuresOfShortStringsGoOutOfEachOthersWay() {
    Desk desk =
        SetDown.adding(
            Desk.begun(WALK).fitted().picking(new Pick.WholeSlab("walk")),
            "walk",
            Addition.OBJECT,
            "post");
    for (double x : new double[] {0.5, 1, 2, 3, 5, 20, 38, 39.5}) {
      for (double y : new double[] {0.5, 1, 2, 3, 3.5}) {
        Desk held = SetDown.changed(desk, h -> h.at("walk", at(x, y)));
        Hold.HeldAddition what = held.hand().addition().orElseThrow();
        List<Box> figures =
            ReadyMarks.of(held, what, WORDS).stream()
                .filter(Mark.Words.class::isInstance)
                .map(m -> InSight.room((Mark.Words) m))
                .toList();
        assertThat(figures).hasSize(2);
        assertThat(figures.getFirst().meets(figures.getLast())).as("at %s, %s", x, y).isFalse();
        Point middle = held.viewport().toPaper(at(x, y));
        assertThat(figures).noneMatch(b -> b.holds(middle));
      }
    }
  }
}
