package org.jointwright.designer.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.FeatureEdit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class MoveFeatureTest {
  private static final Pick.AtFeature DOOR = new Pick.AtFeature(Ref.outline("drive", 0), 0);

  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                      "drive",
                      Outline.of(
                          List.of(
                              new Point(0, 0),
                              new Point(240, 0),
                              new Point(240, 360),
                              new Point(0, 360))))
                  .withEdges(
                      Map.of(
                          0,
                          EdgeSetting.OPEN.withFeatures(
                              List.of(Feature.of(FeatureKind.GARAGE_DOOR, 60, 168)))))));

  private static final Desk DESK = Desk.begun(PLAN).fitted();

  private static Pointer at(double x) {
    Point paper = DESK.viewport().toPaper(new Point(x, 3));
    return Pointer.on(DESK.viewport(), paper.x(), paper.y(), false);
  }

  private static Feature dragged(double from, double to) {
    Gesture g = MoveFeature.of(DESK, DOOR, at(from));
    Desk moved = g.release(g.drag(g.press(DESK, at(from)), at(to)), at(to));
    assertThat(moved.hand().hold()).isEmpty();
    return Picks.feature(moved.plan(), DOOR).orElseThrow();
  }

  @Test
  void anEndIsDraggedAlone() {
    assertThat(dragged(61, 31)).isEqualTo(Feature.of(FeatureKind.GARAGE_DOOR, 30, 168));
    assertThat(dragged(167, 181)).isEqualTo(Feature.of(FeatureKind.GARAGE_DOOR, 60, 182));
  }

  @Test
  void theMiddleDragsAllOfIt() {
    assertThat(dragged(110, 130)).isEqualTo(Feature.of(FeatureKind.GARAGE_DOOR, 80, 188));
  }

  @Test
  void itStaysOnItsSideAndRunsForward() {
    assertThat(dragged(110, 239)).isEqualTo(Feature.of(FeatureKind.GARAGE_DOOR, 132, 240));
    assertThat(dragged(110, 0)).isEqualTo(Feature.of(FeatureKind.GARAGE_DOOR, 0, 108));
    assertThat(dragged(60, 230)).isEqualTo(Feature.of(FeatureKind.GARAGE_DOOR, 167, 168));
    assertThat(dragged(168, 10)).isEqualTo(Feature.of(FeatureKind.GARAGE_DOOR, 60, 61));
  }

  @Test
  void aClickMovesNothingAndPicks() {
    Gesture g = MoveFeature.of(DESK, DOOR, at(110));
    Desk clicked = g.release(g.press(DESK, at(110)), at(110));
    assertThat(clicked.plan()).isEqualTo(PLAN);
    assertThat(clicked.picked()).isEqualTo(DOOR);
  }

  @Test
  void aDragIsOneStepAndUndoingUnderTheHandIsNoFault() {
    Gesture g = MoveFeature.of(DESK, DOOR, at(110));
    Desk moved = g.drag(g.drag(g.press(DESK, at(110)), at(120)), at(130));
    assertThat(moved.history().past()).hasSize(1);
    assertThat(moved.undone().plan()).isEqualTo(PLAN);
    Desk gone = moved.edited(new FeatureEdit.Remove(Ref.outline("drive", 0), 0));
    assertThat(g.drag(gone, at(140))).isEqualTo(gone);
  }

  @Test
  void itLiesUnderThePointerJustInsideItsSide() {
    double pixel = DESK.viewport().inches(1);
    assertThat(UnderPointer.of(DESK, new Point(110, 7 * pixel))).isEqualTo(DOOR);
    assertThat(UnderPointer.of(DESK, new Point(110, -2 * pixel)))
        .isEqualTo(new Pick.AtEdge(Ref.outline("drive", 0)));
    assertThat(UnderPointer.of(DESK, new Point(220, 6 * pixel)))
        .isEqualTo(new Pick.AtEdge(Ref.outline("drive", 0)));
  }
}
