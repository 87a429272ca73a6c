package org.jointwright.designer.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Slabs and sides that the hand brings near other slabs lie against them. */
class AgainstTest {
  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of("patio", box(0, 0, 240, 240)),
              Slab.of("walk", box(300, 80, 144, 48)),
              Slab.of("wall", box(-60, 300, 500, 60))));

  private static final Desk DESK =
      Desk.begun(PLAN).fitted().withSight(s -> s.with(s.viewport(), false));

  private static Outline box(double x, double y, double wide, double high) {
    return Outline.of(
        List.of(
            new Point(x, y),
            new Point(x + wide, y),
            new Point(x + wide, y + high),
            new Point(x, y + high)));
  }

  private static Pointer at(double x, double y, boolean free) {
    Point paper = DESK.viewport().toPaper(new Point(x, y));
    return Pointer.on(DESK.viewport(), paper.x(), paper.y(), free);
  }

  /** The desk while the hand still holds what it has dragged so far from a place. */
  private static Desk held(Desk desk, double x, double y, double right, double up, boolean free) {
    Pointer grip = at(x, y, free);
    Gesture g = Gestures.begin(desk, grip, "slab");
    Desk now = g.drag(g.press(desk, grip), at(x + right / 2, y + up / 2, free));
    return g.drag(now, at(x + right, y + up, free));
  }

  private static Box walk(double gap, boolean free) {
    Desk desk = held(DESK, 420, 104, gap - 60, 0, free);
    return desk.plan().slab("walk").orElseThrow().outline().ring().box();
  }

  private static double pixels(double pixels) {
    return DESK.viewport().inches(pixels);
  }

  @Test
  void aSlabThatComesNearASideItFacesLiesAgainstIt() {
    assertThat(walk(pixels(8.5), false).minX()).isEqualTo(240);
    assertThat(walk(-pixels(8.5), false).minX()).as("a little over it too").isEqualTo(240);
    double beyond = pixels(9.5);
    assertThat(walk(beyond, false).minX()).isEqualTo(Math.rint(240 + beyond));
    assertThat(walk(pixels(4), true).minX())
        .as("a free hand")
        .isCloseTo(240 + pixels(4), within(0.1));
    assertThat(walk(pixels(8.5), false).minY()).as("along it by whole inches").isEqualTo(80);
  }

  @Test
  void whereItStandsAlongTheSideIsSaid() {
    Desk desk = held(DESK, 420, 104, -58, 0, false);
    Hold.HeldThings held = (Hold.HeldThings) desk.hand().hold().orElseThrow();
    assertThat(held.pencil().orElseThrow().guides())
        .singleElement()
        .satisfies(
            g -> {
              assertThat(g.from()).isEqualTo(new Point(240, 0));
              assertThat(g.to()).isEqualTo(new Point(240, 80));
              assertThat(g.beyond()).contains(new Point(240, 240));
            });
  }

  @Test
  void asASlabIsBroughtIntoAnInsideCornerItLiesAgainstBothSides() {
    Desk desk = held(DESK, 420, 104, -60 + pixels(6), 172 - pixels(5), false);
    assertThat(desk.plan().slab("walk").orElseThrow().outline().ring().box())
        .as("under the wall only, for the patio ends below")
        .satisfies(b -> assertThat(b.maxY()).isEqualTo(300));
    Plan high = PLAN.withSlab("patio", s -> s.withOutline(box(0, 0, 240, 270)));
    Desk both =
        held(
            Desk.begun(high).withSight(s -> s.with(DESK.viewport(), false)),
            420,
            104,
            -60 + pixels(6),
            172 - pixels(5),
            false);
    assertThat(both.plan().slab("walk").orElseThrow().outline().ring().box())
        .isEqualTo(new Box(240, 252, 384, 300));
  }

  @Test
  void whatOnlyPassesASideIsNotDrawnToIt() {
    // Below the patio's end there is nothing to lie against.
    Desk desk = held(DESK, 420, 104, -60 + pixels(6), -132 - pixels(14), false);
    assertThat(desk.plan().slab("walk").orElseThrow().outline().ring().box().minX())
        .isEqualTo(Math.rint(240 + pixels(6)));
  }

  @Test
  void aSidePushedNearOneItFacesLiesAgainstIt() {
    assertThat(pushed(60 - pixels(8.5), false)).isEqualTo(300);
    assertThat(pushed(60 + pixels(8.5), false)).isEqualTo(300);
    double beyond = 60 - pixels(9.5);
    assertThat(pushed(beyond, false)).isEqualTo(240 + Math.rint(beyond));
    assertThat(pushed(60 - pixels(4), true)).isCloseTo(300 - pixels(4), within(0.1));
  }

  private static double pushed(double by, boolean free) {
    Desk desk = held(DESK, 240, 200, by, 0, free);
    return desk.plan().slab("patio").orElseThrow().outline().ring().box().maxX();
  }
}
