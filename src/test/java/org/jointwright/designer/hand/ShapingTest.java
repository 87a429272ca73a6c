package org.jointwright.designer.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.designer.shaping.SideShape;
import org.jointwright.designer.shaping.Whole;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Sides and whole things under the hand, on desks without a toolkit. */
class ShapingTest {
  private static final Ref BOTTOM = Ref.outline("drive", 0);
  private static final Thing DRIVE = new Thing.WholeSlab("drive");

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Outline box(double x, double y, double wide, double high) {
    return Outline.of(List.of(p(x, y), p(x + wide, y), p(x + wide, y + high), p(x, y + high)));
  }

  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of("drive", box(0, 0, 240, 360))
                  .withOpenings(
                      List.of(new Opening(box(100, 100, 48, 48), Map.of(), Kept.NOTHING))),
              Slab.of("walk", box(300, 0, 48, 200))));

  /** The paper stays as it lies, so that places on it stay the same. */
  private static final Desk DESK =
      Desk.begun(PLAN).fitted().withSight(s -> s.with(s.viewport(), false));

  private static Pointer at(double x, double y) {
    return at(x, y, false);
  }

  private static Pointer at(double x, double y, boolean free) {
    Point paper = DESK.viewport().toPaper(p(x, y));
    return Pointer.on(DESK.viewport(), paper.x(), paper.y(), free);
  }

  private static Desk dragged(Desk from, Pointer grip, Pointer... to) {
    return dragged(from, false, grip, to);
  }

  private static Desk dragged(Desk from, boolean adds, Pointer grip, Pointer... to) {
    Gesture g = Gestures.begin(from, grip, "slab", adds);
    Desk desk = g.press(from, grip);
    for (Pointer q : to) {
      desk = g.drag(desk, q);
    }
    return g.release(desk, to.length == 0 ? grip : to[to.length - 1]);
  }

  private static Outline outline(Desk desk) {
    return desk.plan().slabs().getFirst().outline();
  }

  @Test
  void aSideIsPushedOutAndTheSidesBesideItKeepTheirWay() {
    Desk desk = dragged(DESK, at(60, 0), at(62, -20), at(66, -36.3));
    assertThat(outline(desk)).isEqualTo(box(0, -36, 240, 396));
    assertThat(desk.picked()).isEqualTo(new Pick.AtEdge(BOTTOM));
    assertThat(desk.hand().hold()).isEmpty();
    assertThat(desk.undone().plan()).as("one step").isEqualTo(PLAN);
  }

  @Test
  void besideASlantTheEndRunsAlongIt() {
    Outline slanted = Outline.of(List.of(p(0, 0), p(240, 0), p(300, 240), p(0, 240)));
    Desk desk = Desk.begun(Plan.EMPTY.withSlabs(List.of(Slab.of("drive", slanted))));
    Desk pushed = SideShape.pushed(desk, BOTTOM, 24, false).orElseThrow();
    assertThat(outline(pushed).vertices().get(1).at().distance(p(234, -24))).isLessThan(1e-9);
    assertThat(outline(pushed).vertices().get(0).at()).isEqualTo(p(0, -24));
  }

  @Test
  void aSideIsNotPushedThroughTheSlab() {
    assertThat(SideShape.pushed(DESK, BOTTOM, -90, false)).isPresent();
    assertThat(SideShape.pushed(DESK, BOTTOM, -110, false)).as("into the opening").isEmpty();
    assertThat(SideShape.pushed(DESK, BOTTOM, -400, false)).isEmpty();
  }

  @Test
  void aPickedSideIsBentByItsMiddleAndDrawnStraightAgain() {
    Desk picked = DESK.picking(new Pick.AtEdge(BOTTOM));
    Desk bent = dragged(picked, at(120, 0), at(120, -20), at(124, -30.2));
    assertThat(outline(bent).vertices().getFirst().via()).contains(p(120, -30));
    Desk straight = dragged(bent, at(120, -30), at(120, -12), at(120, -1));
    assertThat(outline(straight)).isEqualTo(box(0, 0, 240, 360));
    assertThat(straight.undone().plan()).isEqualTo(bent.plan());
  }

  @Test
  void noSideBulgesMoreThanHalfACircle() {
    assertThat(SideShape.bulging(DESK, BOTTOM, 120, false)).isPresent();
    assertThat(SideShape.bulging(DESK, BOTTOM, 121, false)).isEmpty();
    Desk bent = SideShape.bulging(DESK, BOTTOM, 40, false).orElseThrow();
    Desk wider = SideShape.ofRadius(bent, BOTTOM, 150).orElseThrow();
    Arc arc = (Arc) outline(wider).ring().edges().getFirst();
    assertThat(arc.radius()).isCloseTo(150, within(1e-9));
    assertThat(SideShape.bulge(arc)).as("on the same side").isCloseTo(60, within(1e-9));
    assertThat(SideShape.ofRadius(bent, BOTTOM, 119)).isEmpty();
  }

  @Test
  void aRoundedCornerKeepsItsPlaceWhenItsRadiusIsTyped() {
    Ref corner = Ref.outline("drive", 0);
    Desk round = SideShape.rounded(DESK, corner, 36).orElseThrow();
    assertThat(SideShape.isRounding(round.plan(), corner)).isTrue();
    Desk larger = SideShape.ofRadius(round, corner, 60).orElseThrow();
    assertThat(outline(larger))
        .isEqualTo(outline(SideShape.rounded(DESK, corner, 60).orElseThrow()));
    assertThat(outline(SideShape.sharpened(larger, corner).orElseThrow()).vertices()).hasSize(4);
    assertThat(SideShape.rounded(DESK, corner, 239)).isPresent();
    assertThat(SideShape.rounded(DESK, corner, 240)).isEmpty();
  }

  @Test
  void aSlabIsDraggedWithAllInItAndStandsAtTheCornerOfAnother() {
    Desk desk = dragged(DESK, at(324, 120), at(310, 118), at(289, 140.2));
    Outline walk = desk.plan().slabs().getLast().outline();
    assertThat(walk).as("to whole inches").isEqualTo(box(265, 20, 48, 200));
    Desk near = dragged(DESK, at(324, 120), at(300, 118), at(266, 122));
    assertThat(near.plan().slabs().getLast().outline()).isEqualTo(box(240, 0, 48, 200));
    assertThat(near.undone().plan()).isEqualTo(PLAN);
    Desk free = dragged(DESK, at(324, 120, true), at(300, 118, true), at(266.5, 122, true));
    assertThat(free.plan().slabs().getLast().outline().vertices().getFirst().at())
        .as("with the help held off")
        .isEqualTo(p(242.5, 2));
  }

  @Test
  void twoDragsAreTwoSteps() {
    Desk first = dragged(DESK, at(324, 120), at(340, 120), at(364, 120));
    Desk second = dragged(first, at(364, 120), at(380, 120), at(404, 120));
    assertThat(second.undone().plan()).isEqualTo(first.plan());
    assertThat(second.undone().undone().plan()).isEqualTo(PLAN);
  }

  @Test
  void anOpeningStaysInItsSlab() {
    Desk desk = dragged(DESK, at(124, 124), at(60, 124), at(44, 124));
    assertThat(desk.plan().slabs().getFirst().openings().getFirst().outline())
        .isEqualTo(box(20, 100, 48, 48));
    Desk out = dragged(DESK, at(124, 124), at(60, 124), at(-100, 124));
    assertThat(out.plan().slabs().getFirst().openings().getFirst().outline().ring().box().minX())
        .isGreaterThan(0);
  }

  @Test
  void allThatLiesInAnAreaIsPickedAndShiftAddsToIt() {
    Desk area = dragged(DESK, at(290, -20), at(330, 100), at(360, 210));
    assertThat(area.picked()).isEqualTo(new Pick.WholeSlab("walk"));
    Desk both = dragged(area, true, at(20, 20));
    assertThat(both.picked())
        .isEqualTo(new Pick.Several(List.of(new Thing.WholeSlab("walk"), DRIVE)));
    Desk less = dragged(both, true, at(320, 100));
    assertThat(less.picked()).isEqualTo(new Pick.WholeSlab("drive"));
    Desk all = dragged(DESK, at(-20, -20), at(100, 100), at(360, 370));
    assertThat(all.picked())
        .as("what is in a slab is not named beside it")
        .isEqualTo(new Pick.Several(List.of(DRIVE, new Thing.WholeSlab("walk"))));
    assertThat(all.hand().hold()).isEmpty();
    assertThat(dragged(all, at(-30, -30)).picked()).isEqualTo(Pick.NOTHING);
  }

  @Test
  void severalAreDraggedTogetherAndAClickPicksOneOfThem() {
    Desk both = DESK.picking(new Pick.Several(List.of(DRIVE, new Thing.WholeSlab("walk"))));
    Desk moved = dragged(both, at(20, 20), at(30, 20), at(32, 44));
    assertThat(moved.plan().slabs().get(0).outline()).isEqualTo(box(12, 24, 240, 360));
    assertThat(moved.plan().slabs().get(1).outline()).isEqualTo(box(312, 24, 48, 200));
    assertThat(moved.picked()).isEqualTo(both.picked());
    assertThat(dragged(both, at(20, 20)).picked()).isEqualTo(new Pick.WholeSlab("drive"));
  }

  @Test
  void copiesStandClearAndAnOpeningsCopyStaysInTheSlab() {
    Desk copied = Whole.copied(DESK, List.of(DRIVE));
    assertThat(copied.plan().slabs()).hasSize(3);
    assertThat(copied.plan().slabs().getLast().outline())
        .as("above: to the right the walk is in the way")
        .isEqualTo(box(0, 384, 240, 360));
    assertThat(copied.picked()).isEqualTo(new Pick.WholeSlab("drive 2"));
    Thing opening = new Thing.AnOpening("drive", 0);
    Desk two = Whole.copied(DESK, List.of(opening));
    assertThat(two.picked()).isEqualTo(new Pick.AtOpening("drive", 1));
    Desk told =
        Whole.copied(
            Desk.begun(
                Plan.EMPTY.withSlabs(
                    List.of(
                        Slab.of("drive", box(0, 0, 100, 100))
                            .withOpenings(
                                List.of(
                                    new Opening(box(20, 20, 60, 60), Map.of(), Kept.NOTHING)))))),
            List.of(opening));
    assertThat(told.notice().orElseThrow().key()).isEqualTo("window.notice.noRoom");
  }

  @Test
  void aSlabIsTurnedUntilASideIsLevel() {
    Outline slanted = Outline.of(List.of(p(0, 0), p(300, 40), p(300, 240), p(0, 240)));
    Desk desk = Desk.begun(Plan.EMPTY.withSlabs(List.of(Slab.of("drive", slanted))));
    Desk level = Whole.levelled(desk, BOTTOM);
    assertThat(outline(level).vertices().get(1).at().y()).isCloseTo(0, within(1e-9));
    assertThat(outline(level).ring().area()).isCloseTo(slanted.ring().area(), within(1e-6));
  }

  @Test
  void whatIsHeldWhileASideMovesIsThatSide() {
    Gesture g = Gestures.begin(DESK, at(60, 0), "slab");
    Desk desk = g.drag(g.press(DESK, at(60, 0)), at(60, -24));
    assertThat(desk.hand().hold()).contains(new Hold.HeldSide(BOTTOM, List.of(), Optional.empty()));
    assertThat(desk.hand().isMoving()).isTrue();
  }
}
