package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A broken rule mended with one click in the real window, by mouse and keys. */
@ExtendWith(NeedsWindow.class)
class FixesInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void takeAJointOut() {
    rig = new Rig(1280, 800);
    rig.type("20'").key(KeyCode.ENTER);
    rig.type("30' left").key(KeyCode.ENTER);
    rig.type("20' left").key(KeyCode.ENTER);
    rig.type("close").key(KeyCode.ENTER).laid();
    rig.clickOn("step-joints");
    Joint across =
        joints().stream()
            .filter(JointSlide::canSlide)
            .filter(j -> Math.abs(j.path().start().y() - j.path().end().y()) < 1)
            .findFirst()
            .orElseThrow();
    Point grip = across.path().start().towards(across.path().end(), 0.2);
    rig.click(grip).key(KeyCode.DELETE).laid();
    assertThat(rig.text("findings-count")).contains("must");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private List<Joint> joints() {
    return rig.plan().slabs().getFirst().joints();
  }

  private void goToTheFirstFinding() {
    rig.clickOn("finding-1");
    rig.until(() -> rig.node0("fix-1") != null);
  }

  @Test
  void oneClickMendsTheFindingAndUndoBringsItBack() {
    Plan broken = rig.plan();
    assertThat(rig.has("fix-1")).as("fixes before a finding is gone to").isFalse();
    goToTheFirstFinding();
    rig.clickOn("fix-1").laid();
    assertThat(rig.text("findings-count")).isEqualTo("none");
    assertThat(joints()).hasSize(broken.slabs().getFirst().joints().size() + 1);
    assertThat(rig.has("fix-1")).isFalse();
    assertThat(rig.text("undo")).contains("add a joint across P");
    rig.clickOn("undo").laid();
    assertThat(rig.plan()).isEqualTo(broken);
    assertThat(rig.text("findings-count")).contains("must");
  }

  @Test
  void theKeyboardMendsItToo() {
    goToTheFirstFinding();
    rig.key(KeyCode.TAB).key(KeyCode.ENTER).laid();
    assertThat(rig.text("findings-count")).isEqualTo("none");
  }

  @Test
  void aFixOfAPlanThatHasChangedSinceIsDropped() {
    goToTheFirstFinding();
    rig.clickOn("undo").laid();
    assertThat(rig.has("fix-1")).isFalse();
    assertThat(rig.text("findings-count")).isEqualTo("none");
  }
}
