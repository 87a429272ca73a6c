package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.Step;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A slab drawn in the real window, by clicks and by typing. */
@ExtendWith(NeedsWindow.class)
class DrawingInTheWindowTest {
  private static Point feet(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  @Test
  void fourClicksAndOneAtTheFirstCornerMakeASlab() {
    try (Rig rig = new Rig()) {
      rig.click(feet(0, 0)).click(feet(20, 0)).click(feet(20, 12)).click(feet(0, 12));
      assertThat(rig.desk().draft()).isPresent();
      rig.click(feet(0, 0)).laid();
      assertThat(rig.desk().draft()).isEmpty();
      assertThat(rig.plan().slabs()).hasSize(1);
      Slab slab = rig.plan().slabs().getFirst();
      assertThat(slab.outline().vertices()).hasSize(4);
      assertThat(slab.outline().ring().signedArea()).isEqualTo(20 * 12 * 144.0);
      assertThat(slab.joints()).isNotEmpty();
      assertThat(rig.text("undo")).contains("draw");
    }
  }

  @Test
  void fourSentencesMakeASlab() {
    try (Rig rig = new Rig()) {
      rig.type("24'6").key(KeyCode.ENTER);
      rig.type("12' turn left").key(KeyCode.ENTER);
      rig.type("24'6 turn left").key(KeyCode.ENTER);
      rig.type("close").key(KeyCode.ENTER).laid();
      assertThat(rig.plan().slabs()).hasSize(1);
      Slab slab = rig.plan().slabs().getFirst();
      assertThat(slab.outline().ring().box().width()).isEqualTo(294);
      assertThat(slab.outline().ring().area()).isCloseTo(294 * 144.0, within());
      assertThat(slab.joints()).isNotEmpty();
    }
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-6);
  }

  @Test
  void whatIsTypedIsReadBackBeforeEnter() {
    try (Rig rig = new Rig()) {
      rig.type("24'6").key(KeyCode.ENTER);
      rig.type("12' right 30");
      String spoken = Rig.get(() -> rig.designer().pane().plan().getAccessibleText());
      assertThat(spoken).contains("12' right 30").contains("turned 30° right from the side before");
    }
  }

  @Test
  void aSentenceThatIsNotUnderstoodPlacesNothingAndSaysWhy() {
    try (Rig rig = new Rig()) {
      rig.type("24'6").key(KeyCode.ENTER);
      rig.type("12' right 400").key(KeyCode.ENTER);
      assertThat(rig.desk().draft().orElseThrow().placed()).hasSize(2);
      String spoken = Rig.get(() -> rig.designer().pane().plan().getAccessibleText());
      assertThat(spoken).contains("is no turn");
    }
  }

  @Test
  void escapeStepsBackSentenceThenCornerThenDraft() {
    try (Rig rig = new Rig()) {
      rig.type("20'").key(KeyCode.ENTER);
      rig.type("10' turn left");
      rig.key(KeyCode.BACK_SPACE);
      assertThat(rig.desk().draft().orElseThrow().typed()).isEqualTo("10' turn lef");
      rig.key(KeyCode.ESCAPE);
      assertThat(rig.desk().draft().orElseThrow().typed()).isEmpty();
      rig.key(KeyCode.ESCAPE);
      assertThat(rig.desk().draft().orElseThrow().placed()).hasSize(1);
      rig.key(KeyCode.ESCAPE).key(KeyCode.ESCAPE);
      assertThat(rig.desk().draft()).isEmpty();
    }
  }

  @Test
  void anArcIsTypedByItsBulge() {
    try (Rig rig = new Rig()) {
      rig.type("20'").key(KeyCode.ENTER);
      rig.type("12' turn left").key(KeyCode.ENTER);
      rig.type("20' turn left out 3'").key(KeyCode.ENTER);
      rig.type("close").key(KeyCode.ENTER).laid();
      Slab slab = rig.plan().slabs().getFirst();
      assertThat(slab.outline().ring().box().height()).isCloseTo(15 * 12, within());
    }
  }

  @Test
  void theWheelZoomsAboutThePointerAndTheMiddleButtonPushesThePaper() {
    try (Rig rig = new Rig()) {
      Point before = rig.desk().viewport().toPlan(new Point(200, 150));
      rig.wheel(2, 200, 150);
      assertThat(rig.desk().viewport().scale()).isGreaterThan(1.55);
      assertThat(rig.desk().viewport().toPlan(new Point(200, 150)).distance(before))
          .isLessThan(1e-6);
      rig.drag(javafx.scene.input.MouseButton.MIDDLE, 200, 150, 260, 190);
      assertThat(rig.desk().viewport().toPlan(new Point(260, 190)).distance(before))
          .isLessThan(1e-6);
      rig.key(KeyCode.CONTROL, KeyCode.DIGIT0);
      assertThat(rig.desk().sight().isFitted()).isTrue();
    }
  }

  @Test
  void theStepsOfThePathAreReachedByAClick() {
    try (Rig rig = new Rig()) {
      rig.clickOn("step-sheets");
      assertThat(rig.desk().sight().step()).isEqualTo(Step.SHEETS);
      assertThat(rig.text("plan-head")).isEqualTo("Sheets");
    }
  }
}
