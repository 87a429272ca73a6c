package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javafx.scene.input.KeyCode;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Ready shapes in the real window: sized by typing, set down by mouse and by keys. */
@ExtendWith(NeedsWindow.class)
class ReadyInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void open() {
    rig = new Rig(1280, 800);
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Slab last() {
    return rig.plan().slabs().getLast();
  }

  private void choose(int number) {
    rig.clickOn("row-ready-kind");
    for (int i = 0; i < number; i++) {
      rig.key(KeyCode.DOWN);
    }
    rig.key(KeyCode.ENTER);
  }

  @Test
  void aRectangleIsSizedByTypingAndClickedIntoItsPlace() {
    rig.clickOn("deed-ready-shape").fill("ready-across", "24'6").fill("ready-up", "12'");
    rig.click(new Point(24, 36)).laid();
    Box box = last().outline().ring().box();
    assertThat(box.width()).isCloseTo(294, within(1e-9));
    assertThat(box.height()).isCloseTo(144, within(1e-9));
    assertThat(last().joints()).isNotEmpty();
    assertThat(rig.text("undo")).contains("draw slab 1");
  }

  @Test
  void aWalkWithABendIsSetDownByKeysAlone() {
    rig.drawn("20'", "30' turn left", "20' turn left");
    rig.key(KeyCode.CONTROL, KeyCode.R);
    choose(6);
    rig.fill("ready-wide", "4'").fill("ready-turn", "90");
    rig.act(() -> rig.designer().pane().plan().requestFocus());
    Point before = rig.desk().hand().shape().orElseThrow().pencil().at();
    rig.key(KeyCode.SHIFT, KeyCode.RIGHT).key(KeyCode.UP);
    assertThat(rig.desk().hand().shape().orElseThrow().pencil().at())
        .isEqualTo(before.plus(new Point(12, 1)));
    rig.key(KeyCode.ENTER).laid();
    assertThat(rig.plan().slabs()).hasSize(2);
    assertThat(last().outline().ring().area()).isCloseTo(48 * 24 * 12, within(1e-6));
  }

  @Test
  void aSizeThatCannotBeIsRefusedBesideItsBox() {
    rig.clickOn("deed-ready-shape");
    choose(1);
    rig.fill("ready-upWide", "40'");
    assertThat(rig.text("trouble-ready-upWide")).contains("do not go together");
    assertThat(rig.desk().hand().shape().orElseThrow().shape().sizes().get(3)).isEqualTo(144);
    rig.key(KeyCode.ESCAPE).clickOn("deed-stop-drawing");
    assertThat(rig.desk().hand().shape()).isEmpty();
  }

  @Test
  void aCurvedDriveIsDrawnByItsMiddleLineAndItsWidth() {
    rig.clickOn("deed-draw-strip").fill("strip-wide", "12'");
    rig.act(() -> rig.designer().pane().plan().requestFocus());
    rig.type("20' up").key(KeyCode.ENTER).type("24' left 45 out 3'").key(KeyCode.ENTER);
    rig.clickOn("deed-end-strip").laid();
    assertThat(last().outline().vertices().stream().filter(v -> v.via().isPresent())).hasSize(2);
    assertThat(rig.text("undo")).contains("draw slab 1");
    assertThat(rig.desk().draft()).isEmpty();
  }
}
