package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Pick;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A slab of 20 by 30 ft changed in the real window, by mouse and keys. */
@ExtendWith(NeedsWindow.class)
class EditingInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawASlab() {
    rig = new Rig().drawn("20'", "30' turn left", "20' turn left");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Slab slab() {
    return rig.plan().slabs().getFirst();
  }

  private static Point feet(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private Joint across() {
    return slab().joints().stream()
        .filter(JointSlide::canSlide)
        .filter(j -> Math.abs(j.path().start().y() - j.path().end().y()) < 1)
        .findFirst()
        .orElseThrow();
  }

  private static Point partWay(Joint joint, double share) {
    return joint.path().start().towards(joint.path().end(), share);
  }

  @Test
  void aCornerIsDraggedAndTheJointsAreLaidAnewWhileItMoves() {
    var before = slab().joints();
    rig.press(feet(20, 30)).move(feet(22, 31)).move(feet(26, 30));
    rig.until(() -> rig.designer().board().desk().laying().isCurrent());
    assertThat(slab().joints()).as("while the button is down").isNotEqualTo(before);
    rig.release().laid();
    assertThat(slab().outline().vertices().get(2).at().distance(feet(26, 30))).isLessThan(4);
    assertThat(rig.desk().picked()).isEqualTo(new Pick.AtCorner(Ref.outline(slab().id(), 2)));
    rig.key(KeyCode.CONTROL, KeyCode.Z).laid();
    assertThat(slab().outline().vertices().get(2).at()).isEqualTo(feet(20, 30));
    assertThat(slab().joints()).isEqualTo(before);
    rig.key(KeyCode.CONTROL, KeyCode.Y).laid();
    assertThat(slab().outline().vertices().get(2).at().x()).isGreaterThan(12 * 25);
  }

  @Test
  void aCornerNeverCrossesTheOutline() {
    rig.drag(feet(20, 30), feet(10, 10), feet(-6, 10));
    assertThat(slab().outline().ring().signedArea()).isPositive();
    assertThat(slab().outline().vertices().get(2).at().x()).isGreaterThan(0);
  }

  @Test
  void anEdgeIsSaidToBeAgainstABuildingAndGetsFiller() {
    rig.click(feet(7, 0));
    assertThat(rig.desk().picked()).isInstanceOf(Pick.AtEdge.class);
    assertThat(rig.text("facts-title")).isEqualTo("Side A–B");
    rig.clickOn("row-edge-against").key(KeyCode.DOWN).key(KeyCode.ENTER).laid();
    assertThat(slab().edge(0).against()).isEqualTo(Against.BUILDING);
    assertThat(slab().joints()).anyMatch(j -> j.kind() == JointKind.ISOLATION);
    ComboBox<?> box = (ComboBox<?>) rig.node("row-edge-against");
    assertThat(Rig.get(() -> box.getValue())).isEqualTo("a building");
    rig.clickOn("row-edge-floats").laid();
    assertThat(slab().edge(0).floats()).isTrue();
    assertThat(Rig.get(() -> ((CheckBox) rig.node0("row-edge-floats")).isSelected())).isTrue();
    assertThat(slab().joints()).noneMatch(j -> j.kind() == JointKind.ISOLATION);
  }

  /** 125 percent over 5 ft where nothing is typed: TM 5-809-12, 1987. */
  @Test
  void anEdgeIsThickenedAsIsUsualAndThenAsTyped() {
    rig.click(feet(7, 0)).clickOn("row-edge-thickened");
    assertThat(slab().edge(0).thickened()).contains(Thickened.USUAL);
    assertThat(rig.text("row-edge-depth")).isEqualTo("5″");
    assertThat(rig.text("row-edge-over")).isEqualTo("5′-0″");
    rig.fill("edge-depth", "8").fill("edge-over", "12 in");
    assertThat(slab().edge(0).thickened().orElseThrow().depth()).contains(Length.inches(8));
    assertThat(slab().edge(0).thickened().orElseThrow().over()).contains(Length.inches(12));
    rig.clickOn("row-edge-thickened");
    assertThat(slab().edge(0).thickened()).isEmpty();
  }

  @Test
  void aSideTakesATypedLengthAndStaysSquare() {
    rig.click(feet(7, 0)).fill("edge-length", "24'6").laid();
    assertThat(slab().outline().ring().box().width()).isCloseTo(294, within(1e-6));
    assertThat(slab().outline().ring().area()).isCloseTo(294 * 360.0, within(1e-3));
  }

  @Test
  void theThicknessIsTypedAndTheJointsFollow() {
    long before = slab().joints().size();
    rig.clickOn("step-section");
    rig.fill("slab-thickness", "6 in").laid();
    assertThat(slab().thickness().inches()).isEqualTo(6);
    assertThat(slab().joints().size()).as("thicker slabs need fewer").isLessThan((int) before);
  }

  @Test
  void aFigureThatCannotBeIsRefusedBesideItsBox() {
    rig.clickOn("step-section");
    rig.fill("slab-thickness", "4 ft");
    assertThat(slab().thickness().inches()).isEqualTo(4);
    assertThat(rig.text("trouble-slab-thickness")).contains("no flatwork");
  }

  @Test
  void aJointThatIsDraggedIsLockedAndTheOthersAreLaidAnew() {
    rig.clickOn("step-joints");
    Joint joint = across();
    Point grip = partWay(joint, 0.2);
    rig.drag(grip, grip.plus(new Point(2, 6)), grip.plus(new Point(3, 14))).laid();
    Joint locked = slab().lockedJoints().getFirst();
    assertThat(slab().lockedJoints()).hasSize(1);
    double moved = locked.path().start().y() - joint.path().start().y();
    assertThat(moved).isBetween(8.0, 20.0);
    double y = locked.path().start().y();
    assertThat(y).as("a mark at whole inches").isCloseTo(Math.rint(y), within(1e-6));
    assertThat(rig.text("undo")).contains("move joint");
    rig.clickOn("deed-unlock").laid();
    assertThat(slab().lockedJoints()).isEmpty();
  }

  @Test
  void aJointGoesWhereItsMarkIsTyped() {
    rig.clickOn("step-joints");
    rig.click(partWay(across(), 0.2)).fill("joint-first", "8'3").laid();
    assertThat(slab().lockedJoints()).anyMatch(j -> Math.abs(j.path().start().y() - 99) < 1e-6);
  }

  @Test
  void takingOutAJointBreaksARuleAndTheFindingIsShown() {
    rig.clickOn("step-joints");
    assertThat(rig.text("findings-count")).isEqualTo("none");
    rig.click(partWay(across(), 0.2)).key(KeyCode.DELETE).laid();
    assertThat(rig.text("findings-count")).contains("must");
    assertThat(rig.has("finding-1")).isTrue();
    rig.clickOn("finding-1");
    assertThat(rig.desk().sight().finding()).hasValue(1);
    rig.clickOn("undo").laid();
    assertThat(rig.text("findings-count")).isEqualTo("none");
  }

  @Test
  void arrowsNudgeACornerByAnInch() {
    rig.click(feet(20, 30)).key(KeyCode.RIGHT).key(KeyCode.RIGHT).key(KeyCode.UP).laid();
    assertThat(slab().outline().vertices().get(2).at()).isEqualTo(new Point(242, 361));
  }

  @Test
  void anOpeningAndAPostArePlacedFromTheSides() {
    rig.click(feet(4, 4)).clickOn("deed-add-opening");
    assertThat(slab().openings()).as("not before it is set down").isEmpty();
    rig.click(feet(12, 20)).laid();
    assertThat(slab().openings()).hasSize(1);
    assertThat(slab().openings().getFirst().outline().ring().box().centre())
        .as("where the hand clicked, to the whole inch")
        .isEqualTo(feet(12, 20));
    rig.fill("opening-wide", "3'").laid();
    assertThat(slab().openings().getFirst().outline().ring().box().width())
        .isCloseTo(36, within(1e-6));
    rig.click(feet(4, 4)).clickOn("deed-add-fixed");
    rig.fill("fixed-from-0", "5'");
    assertThat(rig.plan().fixed()).as("not before it is set down").isEmpty();
    rig.clickOn("deed-set-down").laid();
    assertThat(rig.plan().fixed()).hasSize(1);
    Point at = rig.plan().fixed().getFirst().shape().ring().box().centre();
    assertThat(
            slab().outline().ring().edges().stream()
                .anyMatch(e -> Math.abs(e.distance(at) - 60) < 1e-6))
        .isTrue();
    assertThat(slab().boxOuts()).hasSize(1);
  }

  /** The field that Tab goes to shows what the one before has done; left, it puts nothing back. */
  @Test
  void aPlaceThatIsTypedStaysThoughTheFieldsAfterItAreGoneThrough() {
    rig.click(feet(4, 4)).clickOn("deed-add-opening");
    rig.clickOn("row-opening-from-0").key(KeyCode.CONTROL, KeyCode.A).type("5'");
    for (int i = 0; i < 6; i++) {
      rig.key(KeyCode.TAB);
    }
    rig.fill("opening-from-1", "4'");
    rig.fill("opening-wide", "3'4");
    rig.clickOn("deed-set-down").laid();
    Box box = slab().openings().getFirst().outline().ring().box();
    assertThat(box.minY()).isCloseTo(60, within(1e-6));
    assertThat(box.width()).isCloseTo(40, within(1e-6));
    assertThat(box.maxX()).as("the edge that was typed stays").isCloseTo(192, within(1e-6));
  }

  @Test
  void aFigureThatCannotBeReadIsPutBackButNotInSilence() {
    rig.click(feet(4, 4)).clickOn("deed-add-fixed");
    String before = rig.text("row-fixed-across");
    rig.clickOn("row-fixed-across").key(KeyCode.CONTROL, KeyCode.A).type("6 or 7");
    rig.key(KeyCode.TAB);
    assertThat(rig.text("row-fixed-across")).isEqualTo(before);
    assertThat(rig.text("trouble-fixed-across")).isNotEmpty();
    rig.clickOn("row-fixed-across");
    assertThat(rig.has("trouble-fixed-across")).as("once it is tried again").isFalse();
  }

  @Test
  void aPostIsSquareWhereBothItsSidesAreTyped() {
    rig.click(feet(4, 4)).clickOn("deed-add-fixed");
    rig.fill("fixed-from-0", "5'").fill("fixed-from-3", "6'").fill("fixed-across", "6 x 8");
    assertThat(rig.text("row-fixed-across")).isEqualTo("6″ × 8″");
    rig.clickOn("deed-set-down").laid();
    FixedShape shape = rig.plan().fixed().getFirst().shape();
    assertThat(shape).isInstanceOf(FixedShape.Outlined.class);
    assertThat(shape.ring().box()).isEqualTo(new Box(69, 56, 75, 64));
    assertThat(slab().boxOuts()).hasSize(1);
    rig.fill("fixed-across", "2 x 2 ft").laid();
    assertThat(rig.text("row-fixed-across"))
        .as("one unit is meant for both")
        .isEqualTo("2′-0″ × 2′-0″");
    rig.clickOn("undo").laid();
    rig.fill("fixed-across", "10").laid();
    FixedShape round = rig.plan().fixed().getFirst().shape();
    assertThat(round).isInstanceOf(FixedShape.Round.class);
    assertThat(round.ring().box().centre()).isEqualTo(feet(6, 5));
    rig.clickOn("undo").laid();
    assertThat(rig.plan().fixed().getFirst().shape()).isEqualTo(shape);
  }

  @Test
  void anotherStepIsSeenFromItsHeadToo() {
    ScrollPane side = (ScrollPane) rig.node("side");
    rig.act(() -> rig.designer().board().change(d -> d.picking(Pick.NOTHING)));
    rig.act(() -> side.setVvalue(1));
    rig.clickOn("step-sheets");
    assertThat(Rig.get(side::getVvalue)).isZero();
  }

  @Test
  void whatIsPickedIsSeenFromItsHeadThoughFindingsWereScrolledTo() {
    ScrollPane side = (ScrollPane) rig.node("side");
    rig.act(() -> rig.designer().board().change(d -> d.picking(Pick.NOTHING)));
    rig.act(() -> side.setVvalue(1));
    rig.click(feet(4, 4));
    assertThat(Rig.get(side::getVvalue)).isZero();
  }

  @Test
  void whatIsBeingTypedGoesOnWhereTheRowsRoundItAreMadeAnew() {
    rig.act(() -> rig.designer().board().change(d -> d.picking(Pick.NOTHING)));
    rig.clickOn("row-job-name").key(KeyCode.CONTROL, KeyCode.A).type("ald");
    SlabEdit.Remove remove = new SlabEdit.Remove(slab().id());
    rig.act(() -> rig.designer().board().change(d -> d.edited(remove)));
    assertThat(rig.has("row-job-area")).isFalse();
    rig.type("er").key(KeyCode.ENTER);
    assertThat(rig.plan().job().name()).isEqualTo("alder");
  }
}
