package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.joint.Lap;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Sides, corners and whole slabs changed in the real window, by mouse and keys. */
@ExtendWith(NeedsWindow.class)
class ShapingInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawASlab() {
    rig = new Rig(1280, 800).drawn("20'", "30' turn left", "20' turn left");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Slab slab() {
    return rig.plan().slabs().getFirst();
  }

  private Box box() {
    return slab().outline().ring().box();
  }

  private Edge edge(int i) {
    return slab().outline().ring().edges().get(i);
  }

  private static Point feet(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  @Test
  void aSideIsDraggedOutAndEscPutsItBack() {
    rig.drag(feet(20, 8), feet(20.5, 8), feet(23, 8.5)).laid();
    assertThat(box().width()).isCloseTo(276, within(1.5));
    assertThat(rig.text("undo")).contains("move side B–C");
    double wide = box().width();
    rig.press(new Point(wide, 100)).move(new Point(wide + 20, 100)).move(new Point(wide + 40, 100));
    assertThat(box().width()).isGreaterThan(wide + 30);
    rig.key(KeyCode.ESCAPE).release();
    assertThat(box().width()).isEqualTo(wide);
  }

  @Test
  void aSideIsBentByItsMiddleThenByTypingAndMadeStraight() {
    rig.click(feet(7, 0)).drag(feet(10, 0), feet(10, -1), feet(10, -3)).laid();
    assertThat(edge(0)).isInstanceOf(Arc.class);
    assertThat(rig.text("undo")).contains("bend a side");
    rig.fill("edge-bulge", "4'").laid();
    assertThat(edge(0).at(0.5).y()).isCloseTo(-48, within(1e-6));
    rig.fill("edge-radius", "12'6").laid();
    assertThat(((Arc) edge(0)).radius()).isCloseTo(150, within(1e-6));
    rig.fill("edge-radius", "5'");
    assertThat(rig.text("trouble-edge-radius")).contains("half the span");
    rig.key(KeyCode.ESCAPE).clickOn("deed-straighten").laid();
    assertThat(edge(0).turn()).isZero();
  }

  @Test
  void aCornerIsRoundedByTypingAndMadeSharpAgain() {
    rig.click(feet(20, 30)).fill("corner-rounded", "3'").laid();
    assertThat(((Arc) edge(2)).radius()).isCloseTo(36, within(1e-6));
    assertThat(rig.text("undo")).contains("round corner C");
    rig.fill("edge-radius", "5'").laid();
    assertThat(((Arc) edge(2)).radius()).isCloseTo(60, within(1e-6));
    rig.clickOn("deed-sharpen").laid();
    assertThat(slab().outline().vertices()).hasSize(4);
    assertThat(slab().outline().vertices().get(2).at().distance(feet(20, 30))).isLessThan(1e-6);
  }

  @Test
  void aCornersPlaceAndItsSidesAreTyped() {
    rig.click(feet(20, 30)).fill("corner-right", "22'").fill("corner-up", "31'").laid();
    assertThat(slab().outline().vertices().get(2).at().distance(feet(22, 31))).isLessThan(1e-6);
    rig.clickOn("undo").clickOn("undo").laid();
    rig.click(feet(20, 30)).fill("corner-after", "18'").laid();
    assertThat(edge(2).length()).isCloseTo(216, within(1e-6));
  }

  @Test
  void aSlabIsMovedTurnedMirroredAndCopiedByTypingAndMenu() {
    rig.click(feet(4, 4)).fill("move-right", "10'").fill("move-up", "-2'").laid();
    assertThat(box().minX()).isCloseTo(120, within(1e-6));
    assertThat(box().minY()).isCloseTo(-24, within(1e-6));
    rig.fill("turn-by", "90").laid();
    assertThat(box().width()).isCloseTo(360, within(1e-6));
    assertThat(rig.text("undo")).contains("turn slab 1");
    rig.choose("here-mirror-sideways", new Point(60, 60)).laid();
    assertThat(rig.text("undo")).contains("mirror slab 1");
    rig.choose("here-copy", new Point(60, 60)).laid();
    assertThat(rig.plan().slabs()).hasSize(2);
    assertThat(rig.desk().picked()).isEqualTo(new Pick.WholeSlab("slab 2"));
    rig.key(KeyCode.DELETE).laid();
    assertThat(rig.plan().slabs()).hasSize(1);
  }

  @Test
  void aSlabIsDraggedByItsMiddle() {
    rig.drag(feet(5, 5), feet(6, 5), feet(8, 6)).laid();
    assertThat(box().minX()).isCloseTo(36, within(1.5));
    assertThat(box().minY()).isCloseTo(12, within(1.5));
    assertThat(rig.text("undo")).contains("move slab 1");
  }

  @Test
  void aSlabIsSplitAlongALineAndJoinedAgain() {
    rig.choose("here-split", feet(5, 5));
    rig.click(feet(0, 18)).click(feet(20, 18)).laid();
    assertThat(rig.plan().slabs()).extracting(Slab::id).containsExactly("slab 1", "slab 2");
    assertThat(slab().outline().ring().area()).isCloseTo(240 * 216, within(1e-6));
    assertThat(rig.text("undo")).contains("split slab 1");
    rig.choose("here-join-slab 2", feet(5, 5)).laid();
    assertThat(rig.plan().slabs()).hasSize(1);
    assertThat(slab().outline().vertices()).hasSize(4);
    assertThat(rig.text("undo")).contains("join slab 1 and slab 2");
  }

  @Test
  void severalArePickedByAnAreaByShiftAndInTheListAndGoTogether() {
    rig.choose("here-copy", feet(5, 5)).laid();
    Box all = rig.plan().slabs().getLast().outline().ring().box();
    rig.drag(new Point(-30, -30), feet(5, 5), new Point(all.maxX() + 30, all.maxY() + 30));
    assertThat(rig.desk().picked())
        .isEqualTo(
            new Pick.Several(
                List.of(new Thing.WholeSlab("slab 1"), new Thing.WholeSlab("slab 2"))));
    rig.fill("move-up", "5'").laid();
    assertThat(box().minY()).isCloseTo(60, within(1e-6));
    assertThat(rig.text("undo")).contains("move 2 things");
    rig.key(KeyCode.ESCAPE);
    rig.act(() -> rig.designer().pane().plan().requestFocus());
    rig.key(KeyCode.ESCAPE);
    assertThat(rig.desk().picked()).isEqualTo(Pick.NOTHING);
    rig.key(KeyCode.CONTROL, KeyCode.A);
    assertThat(rig.desk().picked()).isInstanceOf(Pick.Several.class);
    rig.key(KeyCode.ESCAPE);
    rig.act(() -> rig.node0("things").requestFocus());
    rig.key(KeyCode.HOME).key(KeyCode.SHIFT, KeyCode.DOWN);
    rig.until(() -> rig.designer().board().desk().picked() instanceof Pick.Several);
    rig.clickOn("deed-take-out").laid();
    assertThat(rig.plan().slabs()).isEmpty();
  }

  @Test
  void theMenuKeyOffersWhatCanBeDoneAndKeysGoRound() {
    rig.act(() -> rig.designer().pane().plan().requestFocus());
    rig.key(KeyCode.ESCAPE).key(KeyCode.PAGE_DOWN).key(KeyCode.PAGE_DOWN).key(KeyCode.PAGE_DOWN);
    assertThat(rig.desk().picked()).isEqualTo(new Pick.AtEdge(Ref.outline("slab 1", 0)));
    rig.key(KeyCode.DOWN).laid();
    assertThat(box().height()).as("pushed out by an inch").isEqualTo(361);
    rig.key(KeyCode.CONTEXT_MENU);
    assertThat(rig.menu()).contains("here-add-corner", "here-add-feature");
    rig.key(KeyCode.ENTER).laid();
    assertThat(slab().outline().vertices()).as("a corner more").hasSize(5);
    rig.key(KeyCode.ENTER).key(KeyCode.UP);
    assertThat(rig.desk().picked()).isEqualTo(Pick.NOTHING);
    assertThat(rig.desk().sight().pointed()).isNotEqualTo(Pick.NOTHING);
  }

  /** Opens a patio and a drive that share a side, and a walk apart from both. */
  private void threeSlabs() {
    Plan plan =
        Plan.EMPTY.withSlabs(
            List.of(
                Slab.of("patio", box(feet(0, 0), feet(12, 16))),
                Slab.of("drive", box(feet(12, 0), feet(24, 16))),
                Slab.of("walk", box(feet(28, 4), feet(40, 8)))));
    rig.act(() -> rig.designer().board().change(d -> Desk.begun(plan).onPaperOf(d)));
    rig.laid().clickOn("step-outline");
    rig.act(() -> rig.designer().pane().plan().requestFocus());
  }

  private static Outline box(Point from, Point to) {
    return Outline.of(List.of(from, new Point(to.x(), from.y()), to, new Point(from.x(), to.y())));
  }

  private Box box(String slab) {
    return rig.plan().slab(slab).orElseThrow().outline().ring().box();
  }

  @Test
  void theSideOfTwoSlabsIsDraggedForBothAndOneClickLeavesTheOther() {
    threeSlabs();
    rig.drag(feet(12, 5), feet(12.5, 5), feet(14, 5.5)).laid();
    double line = box("patio").maxX();
    assertThat(line).isCloseTo(168, within(1.5));
    assertThat(box("drive")).isEqualTo(new Box(line, 0, 288, 192));
    assertThat(rig.text("undo")).contains("with it");
    rig.clickOn("deed-other-push").laid();
    // Which of both is taken hold of where they lie on one line is the paper’s to say.
    assertThat(box("patio").maxX() == 144 || box("drive").minX() == 144).isTrue();
    assertThat(box("patio").maxX() == line || box("drive").minX() == line).isTrue();
    rig.clickOn("deed-other-push").laid();
    assertThat(box("patio").maxX()).isEqualTo(box("drive").minX()).isEqualTo(line);
    rig.clickOn("undo").laid();
    assertThat(box("patio").maxX()).isEqualTo(144);
  }

  @Test
  void aSlabDraggedOverAnotherSaysSoAndOneBroughtNearLiesAgainstIt() {
    threeSlabs();
    rig.press(feet(37, 5)).move(feet(36, 5)).move(feet(33.2, 5)).laid();
    assertThat(box("walk").minX()).as("against the drive").isEqualTo(288);
    assertThat(Lap.of(rig.plan())).isEmpty();
    rig.move(feet(31, 5)).laid();
    assertThat(Lap.of(rig.plan()))
        .singleElement()
        .satisfies(l -> assertThat(l.deep()).isCloseTo(24, within(1.5)));
    assertThat(rig.desk().laying().laid().orElseThrow().findings())
        .as("while it is still in the hand")
        .anyMatch(f -> f.rule().equals("M11"));
    rig.release().laid();
  }
}
