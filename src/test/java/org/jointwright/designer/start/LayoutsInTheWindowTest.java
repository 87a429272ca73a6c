package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.input.KeyCode;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A patio of 13 by 17 ft laid another way by one click in the real window. */
@ExtendWith(NeedsWindow.class)
class LayoutsInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawAPatio() {
    rig = new Rig(1280, 800).drawn("13'", "17' turn left", "13' turn left");
    rig.clickOn("step-joints").click(new Point(30, 30));
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Slab slab() {
    return rig.plan().slabs().getFirst();
  }

  private void ask() {
    rig.clickOn("layouts-other");
    rig.until(() -> rig.node0("layout-2") != null);
  }

  private boolean isInForce(int number) {
    return Rig.get(() -> rig.node0("layout-" + number + "-now").isVisible());
  }

  @Test
  void oneClickLaysItAnotherWayAndUndoBringsTheFirstBack() {
    Plan before = rig.plan();
    assertThat(rig.has("layout-1")).as("layouts before they are asked for").isFalse();
    ask();
    assertThat(isInForce(1)).isTrue();
    assertThat(isInForce(2)).isFalse();
    rig.clickOn("layout-2-name").laid();
    assertThat(slab().jointing().preference()).isEqualTo(Preference.Overall.SQUAREST);
    assertThat(slab().joints()).isNotEqualTo(before.slabs().getFirst().joints());
    assertThat(isInForce(1)).isFalse();
    assertThat(isInForce(2)).as("the one taken is marked, the others stay").isTrue();
    assertThat(rig.text("undo")).contains("which layout of");
    rig.clickOn("undo").laid();
    assertThat(rig.plan()).isEqualTo(before);
    assertThat(rig.has("layout-1")).isFalse();
  }

  @Test
  void theKeyboardTakesOneToo() {
    ask();
    rig.key(KeyCode.TAB).key(KeyCode.TAB).key(KeyCode.ENTER).laid();
    assertThat(slab().jointing().preference()).isEqualTo(Preference.Overall.SQUAREST);
  }

  @Test
  void theyCanBePutAwayAndGoWithWhatIsPicked() {
    ask();
    rig.clickOn("layouts-other");
    assertThat(rig.has("layout-1")).isFalse();
    ask();
    rig.click(new Point(-12, -12));
    assertThat(Rig.get(() -> rig.node0("layouts").isVisible())).isFalse();
  }
}
