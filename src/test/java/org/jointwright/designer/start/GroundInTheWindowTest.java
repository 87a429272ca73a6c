package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.input.KeyCode;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Pick;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What the user knows of the ground, told to a slab of 20 by 30 ft in the real window. */
@ExtendWith(NeedsWindow.class)
class GroundInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawASlab() {
    rig = new Rig(1280, 800).drawn("20'", "30' turn left", "20' turn left");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private static Point feet(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private Slab slab() {
    return rig.plan().slabs().getFirst();
  }

  private Feature door() {
    return slab().edge(0).features().getFirst();
  }

  @Test
  void aDoorIsMarkedOnASideTypedAndDraggedAlongIt() {
    rig.click(feet(7, 0)).clickOn("deed-add-feature").laid();
    assertThat(door().kind()).isEqualTo(FeatureKind.GARAGE_DOOR);
    rig.fill("feature-from", "2'").fill("feature-to", "11'").laid();
    assertThat(door().from()).isEqualTo(24);
    assertThat(door().to()).isEqualTo(132);
    double pixel = rig.desk().viewport().inches(1);
    double inside = 7 * pixel;
    rig.drag(
            new Point(72, inside),
            new Point(90, inside),
            new Point(100, inside),
            new Point(108, 40))
        .laid();
    assertThat(door().from()).as("all of it by 3 ft").isEqualTo(60);
    assertThat(door().to()).isEqualTo(168);
    rig.drag(new Point(168, inside), new Point(180, inside), new Point(204, inside)).laid();
    assertThat(door().from()).isEqualTo(60);
    assertThat(door().to()).as("its end alone").isEqualTo(204);
    assertThat(rig.text("undo")).contains("change a garage door");
    rig.clickOn("undo").laid();
    assertThat(door().to()).as("a whole drag is one step").isEqualTo(168);
    rig.fill("feature-to", "25'");
    assertThat(door().to()).as("past the end of the side").isEqualTo(168);
    rig.key(KeyCode.ESCAPE).clickOn("deed-take-out").laid();
    assertThat(slab().edge(0).features()).isEmpty();
  }

  @Test
  void aZoneIsDrawnOnTheSlabKeptClearOfJointsAndTakenOut() {
    rig.click(feet(5, 5)).clickOn("deed-draw-zone");
    rig.click(feet(6, 12)).click(feet(14, 12)).click(feet(14, 18)).click(feet(6, 18));
    rig.click(feet(6, 12)).laid();
    assertThat(slab().keepClear()).hasSize(1);
    var ring = slab().keepClear().getFirst().outline().ring();
    assertThat(ring.area()).isEqualTo(96 * 72);
    assertThat(rig.desk().laying().laid().orElseThrow().judgement().of(Severity.MUST))
        .as("no joint runs in it")
        .isEmpty();
    rig.fill("zone-name", "drain").laid();
    assertThat(slab().keepClear().getFirst().name()).isEqualTo("drain");
    rig.click(feet(1, -4)).click(feet(10, 15));
    assertThat(rig.desk().picked()).isEqualTo(new Pick.AtZone(slab().id(), 0));
    rig.key(KeyCode.DELETE).laid();
    assertThat(slab().keepClear()).isEmpty();
    assertThat(rig.text("undo")).contains("free a zone");
  }

  @Test
  void aZoneBesideEverySlabIsRefusedAndCanBeDrawnOn() {
    rig.click(feet(5, 5)).clickOn("deed-draw-zone");
    rig.click(feet(22, 2)).click(feet(25, 2)).click(feet(25, 6)).click(feet(22, 2));
    assertThat(rig.desk().notice().orElseThrow().key()).isEqualTo("window.notice.zoneOutside");
    assertThat(slab().keepClear()).isEmpty();
    assertThat(rig.desk().draft()).as("what was drawn is still there").isPresent();
  }

  @Test
  void anOldJointIsDrawnFromTheEdgeOfASlab() {
    rig.click(feet(-5, -5)).clickOn("deed-draw-old-joint");
    rig.click(feet(8, 0)).click(feet(8, -5)).laid();
    assertThat(rig.plan().given()).hasSize(1);
    assertThat(rig.desk().picked()).isEqualTo(new Pick.AtGiven(0));
    rig.key(KeyCode.DELETE).laid();
    assertThat(rig.plan().given()).isEmpty();
    rig.clickOn("deed-draw-old-joint").click(feet(24, 3)).click(feet(26, 6));
    assertThat(rig.desk().notice().orElseThrow().key()).isEqualTo("window.notice.oldJointApart");
    assertThat(rig.plan().given()).isEmpty();
  }

  @Test
  void theLimitsOfAPourAreTypedAndTakenBack() {
    Plan before = rig.plan();
    rig.click(feet(-5, -5)).fill("pour-most", "5").fill("pour-strip", "12'").laid();
    assertThat(rig.plan().pour().most()).contains(Volume.cubicYards(5));
    assertThat(rig.plan().pour().strip()).contains(Length.feet(12));
    assertThat(slab().joints()).anyMatch(j -> j.purpose() == Purpose.POUR);
    rig.fill("pour-strip", "1'");
    assertThat(rig.plan().pour().strip()).as("a foot is no strip").contains(Length.feet(12));
    assertThat(rig.text("undo")).contains("how much is poured at a time");
    rig.key(KeyCode.ESCAPE).clickOn("undo").clickOn("undo").laid();
    assertThat(rig.plan()).isEqualTo(before);
  }

  @Test
  void theTipOfACornerIsCutOffAtATypedPlace() {
    rig.click(feet(20, 30)).clickOn("deed-cut-tip").laid();
    assertThat(slab().joints()).anyMatch(j -> j.purpose() == Purpose.CORNER && j.locked());
    assertThat(rig.has("deed-cut-tip")).as("once it is cut off").isFalse();
    rig.fill("corner-tip", "2'").laid();
    assertThat(slab().joints().stream().filter(j -> j.purpose() == Purpose.CORNER))
        .singleElement()
        .satisfies(j -> assertThat(j.path().length()).isCloseTo(24 * Math.sqrt(2), within()));
    rig.clickOn("undo").clickOn("undo").laid();
    assertThat(slab().joints()).noneMatch(j -> j.purpose() == Purpose.CORNER);
  }

  @Test
  void aZoneIsDrawnByKeysAlone() {
    rig.act(() -> rig.designer().pane().plan().requestFocus());
    rig.key(KeyCode.ESCAPE).key(KeyCode.PAGE_DOWN).key(KeyCode.CONTEXT_MENU);
    int zone = rig.menu().indexOf("here-draw-zone");
    for (int i = 0; i < zone; i++) {
      rig.key(KeyCode.DOWN);
    }
    rig.key(KeyCode.ENTER).key(KeyCode.PAGE_DOWN);
    for (int i = 0; i < 4; i++) {
      rig.key(KeyCode.SHIFT, KeyCode.RIGHT).key(KeyCode.SHIFT, KeyCode.UP);
    }
    rig.key(KeyCode.ENTER);
    for (KeyCode way : new KeyCode[] {KeyCode.RIGHT, KeyCode.UP, KeyCode.LEFT}) {
      for (int i = 0; i < 3; i++) {
        rig.key(KeyCode.SHIFT, way);
      }
      rig.key(KeyCode.ENTER);
    }
    rig.key(KeyCode.PAGE_DOWN).key(KeyCode.ENTER).laid();
    assertThat(slab().keepClear().getFirst().outline().ring().area()).isEqualTo(36 * 36);
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.api.Assertions.within(0.01);
  }

  @Test
  void aLayoutInLineWithASideIsChosenInTheFacts() {
    rig.clickOn("step-joints").click(feet(5, 5));
    rig.clickOn("row-slab-laid-for").key(KeyCode.DOWN).key(KeyCode.ENTER).laid();
    assertThat(slab().jointing().preference()).isNotEqualTo(Preference.SHORTEST);
    assertThat(rig.text("undo")).contains("which layout of");
  }
}
