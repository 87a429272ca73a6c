package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.SetDown;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The facts at the side of an L, typed into in the real window. */
@ExtendWith(NeedsWindow.class)
class SidePaneInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawAnL() {
    rig = new Rig(1280, 800).drawn("20' right", "10' up", "10' left", "10' up", "10' left");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private static Point feet(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private String focused() {
    return Rig.get(() -> rig.designer().pane().getScene().getFocusOwner().getId());
  }

  private String label(String row) {
    return Rig.get(
        () -> {
          Node line = rig.node0("row-" + row).getParent();
          return ((Labeled) line.lookup(".row-label")).getText();
        });
  }

  /** Up the arm of the L a post is measured from its inside; down in the foot it is not. */
  @Test
  void tabGoesOnWhereItsRowHasGone() {
    rig.click(feet(5, 5)).clickOn("deed-add-fixed");
    rig.act(
        () ->
            rig.designer()
                .board()
                .change(d -> SetDown.changed(d, h -> h.at(h.slab(), feet(5, 15)))));
    rig.clickOn("deed-set-down");
    assertThat(rig.has("row-fixed-from-3")).isTrue();
    rig.clickOn("row-fixed-from-0").key(KeyCode.CONTROL, KeyCode.A).type("5'").key(KeyCode.TAB);
    assertThat(rig.has("row-fixed-from-3")).as("the row that Tab led to").isFalse();
    assertThat(focused()).isEqualTo("row-fixed-from-1");
    rig.key(KeyCode.TAB);
    assertThat(focused()).isEqualTo("row-fixed-from-4");
  }

  /** What is in the hand keeps its rows while a hand types: the next click finds its field. */
  @Test
  void noRowGoesFromUnderTheHandWhileAPostIsTypedIntoItsPlace() {
    rig.click(feet(5, 5)).clickOn("deed-add-fixed");
    rig.act(
        () ->
            rig.designer()
                .board()
                .change(d -> SetDown.changed(d, h -> h.at(h.slab(), feet(5, 15)))));
    double was = top("row-fixed-across");
    rig.clickOn("row-fixed-from-0").key(KeyCode.CONTROL, KeyCode.A).type("5'").key(KeyCode.TAB);
    assertThat(focused()).isEqualTo("row-fixed-from-3");
    assertThat(top("row-fixed-across")).isEqualTo(was);
  }

  @Test
  void bothSizesOfASquareDrainAreReadInTheirField() {
    rig.click(feet(5, 5)).clickOn("deed-add-fixed");
    rig.fill("fixed-across", "15 3/4 x 15 3/4");
    boolean hasRoom =
        Rig.get(
            () -> {
              Node field = rig.node0("row-fixed-across");
              double text = field.lookup(".text").getLayoutBounds().getWidth();
              return text + 20 <= field.getLayoutBounds().getWidth();
            });
    assertThat(rig.text("row-fixed-across")).contains("×");
    assertThat(hasRoom).isTrue();
  }

  private double top(String row) {
    return Rig.get(
        () -> {
          Node node = rig.node0(row);
          return node.localToScene(node.getLayoutBounds()).getMinY();
        });
  }

  @Test
  void aCornerToTheLeftIsSaidToBeThereAndTypedEitherWay() {
    rig.click(feet(0, 20));
    assertThat(label("corner-right")).isEqualTo("Right of A");
    assertThat(label("corner-up")).isEqualTo("Up from A");
    rig.fill("corner-right", "1' left");
    assertThat(label("corner-right")).isEqualTo("Left of A");
    assertThat(rig.text("row-corner-right")).isEqualTo("1\u2032-0\u2033");
    rig.fill("corner-right", "2'");
    assertThat(rig.plan().slabs().getFirst().outline().ring().box().minX())
        .as("farther the same way")
        .isEqualTo(-24);
    rig.fill("corner-right", "-3'");
    assertThat(label("corner-right")).as("a minus turns it round").isEqualTo("Right of A");
    assertThat(rig.text("row-corner-right")).isEqualTo("3\u2032-0\u2033");
    rig.fill("corner-right", "6 in left");
    assertThat(label("corner-right")).isEqualTo("Left of A");
    rig.fill("corner-right", "0");
    assertThat(label("corner-right")).as("at it").isEqualTo("Right of A");
    rig.click(feet(10, 10));
    rig.fill("corner-up", "9' up").fill("corner-up", "8' sideways");
    assertThat(rig.text("trouble-corner-up")).isNotEmpty();
  }

  private double thickness() {
    return rig.plan().slabs().getFirst().thickness().inches();
  }

  @Test
  void inAFieldEscTakesBackWhatIsTypedAndThenLeavesIt() {
    rig.click(feet(5, 5)).clickOn("row-slab-thickness").key(KeyCode.CONTROL, KeyCode.A).type("6");
    rig.key(KeyCode.ESCAPE);
    assertThat(focused()).isEqualTo("row-slab-thickness");
    rig.key(KeyCode.ESCAPE);
    assertThat(focused()).isEqualTo("plan");
    assertThat(thickness()).isEqualTo(4);
  }

  @Test
  void onceAFigureIsTakenUndoInItsFieldUndoesTheJob() {
    rig.click(feet(5, 5)).fill("slab-thickness", "6");
    assertThat(focused()).isEqualTo("row-slab-thickness");
    assertThat(thickness()).isEqualTo(6);
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(thickness()).isEqualTo(4);
    rig.key(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
    assertThat(thickness()).isEqualTo(6);
    rig.key(KeyCode.CONTROL, KeyCode.Z).key(KeyCode.CONTROL, KeyCode.Y);
    assertThat(thickness()).isEqualTo(6);
    rig.key(KeyCode.CONTROL, KeyCode.A).key(KeyCode.DELETE).key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(thickness()).as("what was taken out of the field comes back there").isEqualTo(6);
    rig.key(KeyCode.ESCAPE).type("5").key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(rig.plan().slabs()).as("what is being typed is the field’s to undo").hasSize(1);
  }

  /** Wherever the hand is; told once more, a notice gets the focus once more. */
  @Test
  void aNoticeIsPutAwayByEscAndTakesTheFocusEachTimeItIsTold() {
    for (int i = 0; i < 2; i++) {
      Notice told = Notice.trouble("window.notice.slabFirst", List.of());
      rig.act(() -> rig.designer().board().change(d -> d.told(told)));
      rig.act(() -> {});
      assertThat(focused()).isEqualTo("notice-putAway");
      rig.click(feet(5, 5)).clickOn("row-slab-thickness");
    }
    rig.key(KeyCode.ESCAPE);
    assertThat(rig.desk().notice()).isEmpty();
    assertThat(focused()).isEqualTo("plan");
  }
}
