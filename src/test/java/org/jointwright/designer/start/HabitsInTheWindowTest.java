package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.ZoomEvent;
import org.jointwright.designer.state.Viewport;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What hands do without thinking: wheel, pinch, space, middle button, and the usual keys. */
@ExtendWith(NeedsWindow.class)
class HabitsInTheWindowTest {
  private static final double SAME = 1e-6;

  @TempDir private Path folder;
  private Rig rig;

  @BeforeEach
  void open() {
    rig = new Rig();
    rig.drawn("20'", "12' turn left", "20' turn left");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Viewport view() {
    return rig.desk().viewport();
  }

  @Test
  void theWheelZoomsAboutThePointer() {
    Viewport before = view();
    Point held = before.toPlan(new Point(200, 300));
    rig.wheel(2, 200, 300);
    assertThat(view().scale()).isGreaterThan(before.scale() * 1.1);
    assertThat(view().toPlan(new Point(200, 300)).distance(held)).isLessThan(SAME);
    rig.wheel(-2, 200, 300);
    assertThat(view().scale()).isCloseTo(before.scale(), within(before.scale() * SAME));
  }

  @Test
  void twoFingersZoomAboutThePlaceBetweenThem() {
    Viewport before = view();
    Point held = before.toPlan(new Point(150, 250));
    rig.act(() -> Event.fireEvent(rig.designer().pane().plan(), pinch(150, 250, 1.5)));
    assertThat(view().scale()).isCloseTo(before.scale() * 1.5, within(SAME));
    assertThat(view().toPlan(new Point(150, 250)).distance(held)).isLessThan(SAME);
  }

  private ZoomEvent pinch(double x, double y, double factor) {
    Node paper = rig.designer().pane().plan();
    Point2D screen = paper.localToScreen(x, y);
    EventType<ZoomEvent> type = ZoomEvent.ZOOM;
    Point2D scene = paper.localToScene(x, y);
    // An event is made in the scene's coordinates and handed on in the paper's.
    return new ZoomEvent(
        type,
        scene.getX(),
        scene.getY(),
        screen.getX(),
        screen.getY(),
        false,
        false,
        false,
        false,
        true,
        false,
        factor,
        factor,
        null);
  }

  @Test
  void theMiddleButtonPushesThePaper() {
    Viewport before = view();
    rig.drag(MouseButton.MIDDLE, 300, 300, 360, 260);
    assertThat(view().toPaper(before.toPlan(new Point(300, 300))).distance(new Point(360, 260)))
        .isLessThan(1);
    assertThat(view().scale()).isEqualTo(before.scale());
    assertThat(rig.plan().slabs()).hasSize(1);
  }

  @Test
  void theSpaceBarTurnsTheHandIntoOneThatPushes() {
    Viewport before = view();
    rig.holding(KeyCode.SPACE, () -> rig.drag(MouseButton.PRIMARY, 300, 300, 340, 330));
    assertThat(view().toPaper(before.toPlan(new Point(300, 300))).distance(new Point(340, 330)))
        .isLessThan(1);
    assertThat(rig.desk().draft()).isEmpty();
  }

  @Test
  void everythingIsInSightAgainByOneKey() {
    Viewport before = view();
    rig.wheel(5, 100, 100).drag(MouseButton.MIDDLE, 300, 300, 500, 100);
    assertThat(view()).isNotEqualTo(before);
    rig.key(KeyCode.CONTROL, KeyCode.DIGIT0);
    assertThat(view().scale()).isCloseTo(before.scale(), within(SAME));
    assertThat(view().centre().distance(before.centre())).isLessThan(SAME);
  }

  @Test
  void plusAndMinusZoomAboutTheMiddle() {
    Viewport before = view();
    rig.key(KeyCode.CONTROL, KeyCode.EQUALS);
    assertThat(view().scale()).isGreaterThan(before.scale());
    assertThat(view().centre().distance(before.centre())).isLessThan(SAME);
    rig.key(KeyCode.CONTROL, KeyCode.MINUS);
    assertThat(view().scale()).isCloseTo(before.scale(), within(SAME));
  }

  @Test
  void undoAndDoAgainGoByTheUsualKeys() {
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(rig.plan().slabs()).isEmpty();
    rig.key(KeyCode.CONTROL, KeyCode.Y);
    assertThat(rig.plan().slabs()).hasSize(1);
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    rig.key(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
    assertThat(rig.plan().slabs()).hasSize(1);
  }

  @Test
  void thePrintKeyAsksWhatToPrintFromAnyStep() {
    rig.clickOn("step-outline").key(KeyCode.CONTROL, KeyCode.P);
    rig.until(() -> rig.node0("print") != null);
    assertThat(rig.has("print-preview")).isTrue();
  }

  @Test
  void escapeStepsBackAndNeverEndsTheWork() {
    rig.clickOn("step-outline").click(new Point(120, 70));
    assertThat(rig.desk().picked()).isNotEqualTo(org.jointwright.designer.state.Pick.NOTHING);
    rig.key(KeyCode.ESCAPE).key(KeyCode.ESCAPE).key(KeyCode.ESCAPE);
    assertThat(rig.desk().picked()).isEqualTo(org.jointwright.designer.state.Pick.NOTHING);
    assertThat(rig.plan().slabs()).hasSize(1);
  }

  @Test
  void deleteTakesOutWhatIsPickedAndComesBack() {
    rig.clickOn("step-outline").click(new Point(120, 70)).key(KeyCode.DELETE);
    assertThat(rig.plan().slabs()).isEmpty();
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(rig.plan().slabs()).hasSize(1);
  }

  @Test
  void whatIsBegunAndStoppedLeavesThePaperAsItWas() {
    Viewport before = view();
    rig.key(KeyCode.CONTROL, KeyCode.D).type("90' right").key(KeyCode.ENTER);
    assertThat(view().scale()).as("fitted to what is drawn").isLessThan(before.scale() / 2);
    rig.clickOn("deed-stop-drawing");
    assertThat(view().scale()).isCloseTo(before.scale(), within(SAME));
    assertThat(view().centre().distance(before.centre())).isLessThan(SAME);
    rig.key(KeyCode.CONTROL, KeyCode.D).type("90' right").key(KeyCode.ENTER);
    rig.key(KeyCode.ESCAPE).key(KeyCode.ESCAPE).key(KeyCode.ESCAPE);
    assertThat(rig.desk().draft()).isEmpty();
    assertThat(view().scale()).as("by Esc").isCloseTo(before.scale(), within(SAME));
    rig.key(KeyCode.CONTROL, KeyCode.R);
    assertThat(view().scale()).isLessThan(before.scale());
    rig.key(KeyCode.ESCAPE);
    assertThat(view().scale()).as("a ready shape").isCloseTo(before.scale(), within(SAME));
  }

  @Test
  void aPaperThatWasMovedWhileDrawingStaysWhereItIs() {
    rig.key(KeyCode.CONTROL, KeyCode.D).type("90' right").key(KeyCode.ENTER).wheel(2, 200, 300);
    Viewport moved = view();
    rig.clickOn("deed-stop-drawing");
    assertThat(view()).isEqualTo(moved);
  }
}
