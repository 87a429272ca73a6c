package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Label;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A drive of 20 by 30 ft asked in the real window how near it is to the cheapest. */
@ExtendWith(NeedsWindow.class)
class NearInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawADrive() {
    rig = new Rig(1280, 800).drawn("20'", "30' turn left", "20' turn left");
    rig.clickOn("step-joints").click(new Point(30, 30));
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private boolean isSaid() {
    return rig.node0("near-said").isVisible();
  }

  @Test
  void theAnswerIsSaidAndGoesWhenThePlanChanges() {
    assertThat(Rig.get(this::isSaid)).as("an answer before it is asked").isFalse();
    rig.clickOn("near");
    rig.until(() -> isSaid() && !((Label) rig.node0("near-said")).getText().startsWith("Working"));
    assertThat(rig.text("near-said"))
        .matches("Nothing costs less: .*|At most .* % could be gained.*");
    rig.fill("slab-thickness", "5").laid();
    assertThat(Rig.get(this::isSaid)).as("an answer about another plan").isFalse();
  }

  @Test
  void theQuestionCanBePutAway() {
    rig.clickOn("near").clickOn("near");
    assertThat(Rig.get(this::isSaid)).isFalse();
    rig.click(new Point(-12, -12));
    assertThat(Rig.get(() -> rig.node0("layouts").isVisible())).isFalse();
  }
}
