package org.jointwright.designer.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Said;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Going about the plan, and moving what is picked, by keys alone. */
class WalkTest {
  private static final Point UP = new Point(0, 1);
  private static final Point RIGHT = new Point(1, 0);

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of("drive", Outline.of(List.of(p(0, 0), p(240, 0), p(240, 360), p(0, 360))))
                  .withEdges(
                      Map.of(
                          0,
                          EdgeSetting.OPEN.withFeatures(
                              List.of(Feature.of(FeatureKind.DOOR, 24, 60)))))
                  .withLaid(
                      List.of(
                          Joint.of(
                              "J1",
                              JointKind.CONTRACTION,
                              Path.straight(p(0, 120), p(240, 120)),
                              Purpose.SPACING)),
                      List.of())));

  private static final Desk DESK = Desk.begun(PLAN).fitted();

  @Test
  void roundAndRoundEveryThingIsComeTo() {
    List<Pick> seen = new ArrayList<>();
    Desk desk = Walk.on(DESK, true);
    while (!seen.contains(desk.picked())) {
      seen.add(desk.picked());
      desk = Walk.on(desk, true);
    }
    assertThat(seen)
        .hasSize(10)
        .startsWith(new Pick.WholeSlab("drive"), new Pick.AtCorner(Ref.outline("drive", 0)))
        .contains(new Pick.AtEdge(Ref.outline("drive", 3)))
        .contains(new Pick.AtFeature(Ref.outline("drive", 0), 0));
    assertThat(desk.picked()).isEqualTo(seen.getFirst());
    assertThat(Walk.on(desk, false).picked()).isEqualTo(seen.getLast());
  }

  @Test
  void fromWholeToWholePastCornersAndSides() {
    Slab walk =
        Slab.of("walk", Outline.of(List.of(p(260, 0), p(300, 0), p(300, 360), p(260, 360))));
    Desk desk = Desk.begun(PLAN.withSlabs(List.of(PLAN.slabs().getFirst(), walk))).fitted();
    Pick drive = new Pick.WholeSlab("drive");
    Pick next = new Pick.WholeSlab("walk");
    Desk corner = desk.picking(new Pick.AtCorner(Ref.outline("drive", 2)));
    assertThat(Walk.onWhole(desk, true).picked()).isEqualTo(drive);
    assertThat(Walk.onWhole(corner, true).picked()).isEqualTo(next);
    assertThat(Walk.onWhole(corner, false).picked()).isEqualTo(drive);
    assertThat(Walk.onWhole(desk.picking(next), true).picked()).isEqualTo(drive);
    assertThat(Walk.onWhole(desk.picking(drive), false).picked()).isEqualTo(next);
    assertThat(Walk.onWhole(desk, false).picked()).isEqualTo(next);
  }

  @Test
  void aPlanThatIsSeenWholeLiesStillAndOneOutOfSightComesByAsLittleAsItNeeds() {
    Desk desk = DESK;
    for (int i = 0; i < 12; i++) {
      desk = Walk.on(desk, true);
      assertThat(desk.viewport()).as("%s", desk.picked()).isEqualTo(DESK.viewport());
    }
    Pick corner = new Pick.AtCorner(Ref.outline("drive", 0));
    // The corner is half out below: the paper is pushed up, and not across.
    Desk low =
        DESK.withSight(s -> s.with(s.viewport().pushed(0, 60), false))
            .picking(new Pick.WholeSlab("drive"));
    Desk seen = Walk.on(low, true);
    assertThat(seen.picked()).isEqualTo(corner);
    assertThat(seen.viewport().centre().x()).isEqualTo(low.viewport().centre().x());
    assertThat(seen.viewport().toPaper(p(0, 0)).y())
        .isCloseTo(DESK.viewport().toPaper(p(0, 0)).y(), within(1e-6));
  }

  @Test
  void amongTheJointsItGoesFromJointToJoint() {
    Desk joints = DESK.withStep(Step.JOINTS);
    assertThat(Walk.on(joints, false).picked()).isEqualTo(new Pick.AtJoint("drive", "J1"));
  }

  @Test
  void arrowsPointAtWhatLiesThatWayAndEnterPicksIt() {
    Desk pointing = Arrows.pressed(DESK, RIGHT, 1);
    assertThat(pointing.sight().pointed()).isEqualTo(new Pick.AtEdge(Ref.outline("drive", 1)));
    Desk corner = Arrows.pressed(pointing, UP, 1);
    assertThat(corner.sight().pointed()).isEqualTo(new Pick.AtCorner(Ref.outline("drive", 2)));
    assertThat(corner.picked()).isEqualTo(Pick.NOTHING);
    Desk picked = Walk.entered(corner);
    assertThat(picked.picked()).isEqualTo(new Pick.AtCorner(Ref.outline("drive", 2)));
    Desk moved = Arrows.pressed(Arrows.pressed(picked, RIGHT, 12), RIGHT, 12);
    assertThat(moved.plan().slabs().getFirst().outline().vertices().get(2).at())
        .isEqualTo(p(264, 360));
    assertThat(moved.undone().plan()).as("one step").isEqualTo(PLAN);
    Desk dropped = Walk.entered(moved);
    assertThat(dropped.picked()).isEqualTo(Pick.NOTHING);
    assertThat(dropped.sight().pointed()).isEqualTo(picked.picked());
  }

  @Test
  void aPickedSideGoesWhereTheArrowPointsAndAMarkAlongItsSide() {
    Desk side = DESK.picking(new Pick.AtEdge(Ref.outline("drive", 2)));
    assertThat(Arrows.pressed(side, UP, 1).plan().slabs().getFirst().outline().ring().box().maxY())
        .isEqualTo(361);
    assertThat(Arrows.pressed(side, RIGHT, 1).plan()).as("along itself").isEqualTo(PLAN);
    Desk door = DESK.picking(new Pick.AtFeature(Ref.outline("drive", 0), 0));
    Desk moved = Arrows.pressed(door, RIGHT, 12);
    assertThat(moved.plan().slabs().getFirst().edge(0).features())
        .containsExactly(Feature.of(FeatureKind.DOOR, 36, 72));
    assertThat(Arrows.pressed(door, RIGHT, 1 / 16.0).plan().slabs().getFirst().edge(0).features())
        .containsExactly(Feature.of(FeatureKind.DOOR, 24.0625, 60.0625));
  }

  @Test
  void aZoneIsDrawnByKeysAlone() {
    Desk desk = Drafting.begin(DESK, Drawn.ZONE);
    desk = Drafting.jump(desk, true);
    assertThat(desk.draft().orElseThrow().pencil().orElseThrow().at()).isEqualTo(p(0, 0));
    desk = Arrows.pressed(Arrows.pressed(desk, RIGHT, 60), UP, 60);
    desk = enter(desk);
    for (Point way : List.of(RIGHT, UP, RIGHT.times(-1))) {
      desk = enter(Arrows.pressed(desk, way, 48));
    }
    assertThat(desk.draft().orElseThrow().placed()).hasSize(4);
    desk = enter(Drafting.jump(desk, true));
    assertThat(desk.draft()).as("closed by its first corner").isEmpty();
    assertThat(desk.plan().slabs().getFirst().keepClear().getFirst().outline())
        .isEqualTo(Outline.of(List.of(p(60, 60), p(108, 60), p(108, 108), p(60, 108))));
  }

  @Test
  void aJointIsDrawnByKeysFromTheEndOfAnother() {
    Desk desk = Drafting.begin(DESK, Drawn.JOINT);
    while (desk.draft().orElseThrow().pencil().isEmpty()
        || !desk.draft().orElseThrow().pencil().get().at().equals(p(240, 120))) {
      desk = Drafting.jump(desk, true);
    }
    desk = enter(desk);
    desk = enter(Arrows.pressed(Arrows.pressed(desk, RIGHT, -120), UP, 120));
    List<Joint> locked = desk.plan().slabs().getFirst().lockedJoints();
    assertThat(locked).hasSize(1);
    assertThat(locked.getFirst().path().end().distance(p(0, 360))).isLessThan(1e-6);
  }

  private static Desk enter(Desk desk) {
    return Drafting.enter(desk, new Said.Silent(), "slab");
  }

  @Test
  void arrowsLeadThePencil() {
    Desk drawing = Drafting.begin(DESK, Drawn.ZONE);
    Desk led = Arrows.pressed(Arrows.pressed(drawing, RIGHT, 12), UP, 1);
    Point start = Drafting.start(DESK, drawing.draft().orElseThrow());
    assertThat(led.draft().orElseThrow().pencil().orElseThrow().at())
        .isEqualTo(start.plus(p(12, 1)));
  }
}
