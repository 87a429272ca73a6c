package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.designer.state.Desk;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What lies in two slabs at once is tinted, and how far it reaches in is said beside it. */
class AmissTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private static Slab slab(String id, double x1, double y1, double x2, double y2) {
    return Slab.of(
        id,
        Outline.of(
            List.of(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2))));
  }

  private static Desk desk(double into) {
    return Desk.begun(
            Plan.EMPTY.withSlabs(
                List.of(slab("patio", 0, 0, 240, 240), slab("walk", 240 - into, 60, 400, 108))))
        .fitted();
  }

  @Test
  void whatLiesInBothIsTintedAndNoMore() {
    Desk desk = desk(18);
    assertThat(Amiss.laps(Known.of(desk), desk.viewport()))
        .singleElement()
        .satisfies(
            m -> {
              Mark.Area area = (Mark.Area) m;
              Box box = area.rings().getFirst().box();
              Point low = desk.viewport().toPaper(new Point(222, 60));
              Point high = desk.viewport().toPaper(new Point(240, 108));
              assertThat(area.role()).isEqualTo(Role.MUST);
              assertThat(box.minX()).isCloseTo(low.x(), within(1e-6));
              assertThat(box.maxX()).isCloseTo(high.x(), within(1e-6));
              assertThat(box.maxY()).isCloseTo(low.y(), within(1e-6));
              assertThat(box.minY()).isCloseTo(high.y(), within(1e-6));
            });
    Desk touching = desk(0.4);
    assertThat(Amiss.laps(Known.of(touching), touching.viewport())).isEmpty();
  }

  @Test
  void howFarItReachesInIsSaidUnderIt() {
    Desk desk = desk(18);
    List<Mark> marks = Amiss.said(Known.of(desk), desk.viewport(), WORDS);
    Mark.Words said =
        marks.stream()
            .filter(Mark.Words.class::isInstance)
            .map(Mark.Words.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(said.text()).isEqualTo("walk over patio: 1′-6″");
    assertThat(said.at().y()).isGreaterThan(desk.viewport().toPaper(new Point(240, 60)).y());
    Desk touching = desk(0.4);
    assertThat(Amiss.said(Known.of(touching), touching.viewport(), WORDS)).isEmpty();
  }
}
