package org.jointwright.designer.shaping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.designer.hand.Nudge;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.joint.Lap;
import org.jointwright.joint.Meeting;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A side that slabs share is one line on the ground. */
class SharedSideTest {
  private static final Ref RIGHT = Ref.outline("patio", 1);
  private static final Ref LEFT = Ref.outline("drive", 3);

  private static Outline box(double x, double y, double wide, double high) {
    return Outline.of(
        List.of(
            new Point(x, y),
            new Point(x + wide, y),
            new Point(x + wide, y + high),
            new Point(x, y + high)));
  }

  private static Plan with(Outline neighbour) {
    return Plan.EMPTY.withSlabs(
        List.of(Slab.of("patio", box(0, 0, 120, 200)), Slab.of("drive", neighbour)));
  }

  private static final Plan HALVES = with(box(120, 0, 160, 200));

  private static Box box(Desk desk, String slab) {
    return desk.plan().slab(slab).orElseThrow().outline().ring().box();
  }

  private static Desk pushed(Plan plan, Ref side, double by) {
    return SharedSide.pushed(Desk.begun(plan), side, SharedSide.along(plan, side), by, false)
        .orElseThrow();
  }

  @Test
  void fromEitherSlabTheLineGoesAndNothingLiesOverOrApart() {
    for (Ref side : List.of(RIGHT, LEFT)) {
      Desk desk = pushed(HALVES, side, side.equals(RIGHT) ? 24 : -24);
      assertThat(box(desk, "patio")).isEqualTo(new Box(0, 0, 144, 200));
      assertThat(box(desk, "drive")).isEqualTo(new Box(144, 0, 280, 200));
      assertThat(desk.undone().plan()).as("one step").isEqualTo(HALVES);
    }
  }

  @Test
  void aSideAlongAPartOfItComesTooButOneThatReachesBeyondStays() {
    assertThat(SharedSide.along(with(box(120, 0.4, 160, 200)), RIGHT)).containsExactly(LEFT);
    assertThat(SharedSide.along(with(box(120, 50, 160, 48)), RIGHT)).containsExactly(LEFT);
    assertThat(SharedSide.along(with(box(120, 50, 160, 48)), LEFT))
        .as("but not the long")
        .isEmpty();
    assertThat(SharedSide.along(with(box(120, 0.6, 160, 200)), RIGHT)).isEmpty();
    assertThat(SharedSide.along(with(box(120.6, 0, 160, 200)), RIGHT)).as("apart").isEmpty();
  }

  @Test
  void itGoesNoFartherThanTheOtherHasRoom() {
    List<Ref> with = SharedSide.along(HALVES, RIGHT);
    assertThat(SharedSide.pushed(Desk.begun(HALVES), RIGHT, with, 150, false)).isPresent();
    assertThat(SharedSide.pushed(Desk.begun(HALVES), RIGHT, with, 160, false)).isEmpty();
    assertThat(SharedSide.pushed(Desk.begun(HALVES), RIGHT, List.of(), 160, false)).isPresent();
  }

  @Test
  void oneClickTakesTheOtherWayAndOneMoreComesBack() {
    Desk both = pushed(HALVES, RIGHT, 24);
    SharedSide.Other alone = SharedSide.other(both, RIGHT).orElseThrow();
    assertThat(alone.isAlone()).isTrue();
    assertThat(alone.names()).containsExactly("drive");
    assertThat(box(alone.desk(), "patio").maxX()).isEqualTo(144);
    assertThat(box(alone.desk(), "drive")).isEqualTo(new Box(120, 0, 280, 200));
    assertThat(Lap.of(alone.desk().plan())).hasSize(1);
    SharedSide.Other back = SharedSide.other(alone.desk(), RIGHT).orElseThrow();
    assertThat(back.isAlone()).isFalse();
    assertThat(back.desk().plan().slabs()).isEqualTo(both.plan().slabs());
    assertThat(SharedSide.other(both, LEFT)).as("of another side").isEmpty();
    assertThat(SharedSide.other(Desk.begun(HALVES), RIGHT)).as("of nothing done").isEmpty();
    Plan apart = with(box(140, 0, 160, 200));
    assertThat(SharedSide.other(pushed(apart, RIGHT, 10), RIGHT)).as("none along it").isEmpty();
  }

  @Test
  void arrowKeysTakeBothAlongInOneStep() {
    Desk desk = Desk.begun(HALVES).picking(new Pick.AtEdge(RIGHT));
    for (int i = 0; i < 5; i++) {
      desk = Nudge.by(desk, new Point(1, 0), 1);
    }
    assertThat(box(desk, "patio").maxX()).isEqualTo(125);
    assertThat(box(desk, "drive").minX()).isEqualTo(125);
    assertThat(Meeting.of(desk.plan())).hasSize(1);
    assertThat(desk.undone().plan()).isEqualTo(HALVES);
  }
}
