package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.canvas.FlagMarks;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Offer;
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
    rig.type("30' turn left").key(KeyCode.ENTER);
    rig.type("20' turn left").key(KeyCode.ENTER);
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
  void aClickOnItsFlagGoesToTheFindingToo() {
    Point at = rig.desk().laying().laid().orElseThrow().findings().getFirst().at();
    // The flag’s cloth flies right above the place, 19 px high.
    Point cloth = rig.desk().viewport().toPaper(at).plus(new Point(9, -30));
    assertThat(FlagMarks.of(rig.desk()).at(cloth)).startsWith(1);
    rig.click(rig.desk().viewport().toPlan(cloth));
    rig.until(() -> rig.node0("fix-1") != null);
    assertThat(rig.desk().sight().finding()).hasValue(1);
  }

  @Test
  void theTipOfAFlagGoesAsSoonAsAKeyBeginsASide() {
    Point at = rig.desk().laying().laid().orElseThrow().findings().getFirst().at();
    Point cloth = rig.desk().viewport().toPaper(at).plus(new Point(9, -30));
    rig.clickOn("step-outline");
    rig.act(() -> rig.designer().pane().plan().requestFocus());
    rig.move(rig.desk().viewport().toPlan(cloth));
    assertThat(rig.node("tip").isVisible()).as("over the flag").isTrue();
    rig.key(KeyCode.DIGIT2);
    assertThat(rig.node("tip").isVisible()).isFalse();
    assertThat(rig.desk().draft()).as("a side is begun").isPresent();
  }

  /** Its joint’s facts come above it, and its fixes under it: it must not be pushed from sight. */
  @Test
  void theFindingGoneToStaysUnderTheHand() {
    for (int n = 1; n <= rig.desk().laying().laid().orElseThrow().findings().size(); n++) {
      String id = "finding-" + n;
      if (n == 1) {
        rig.clickOn(id);
      } else {
        rig.key(KeyCode.PAGE_DOWN);
      }
      rig.until(() -> rig.has("fix-1") || rig.has("fix-none"));
      rig.act(() -> {});
      double top = Rig.get(() -> rig.middle(id).getY());
      assertThat(top).as(id).isBetween(40.0, 780.0);
    }
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

  @Test
  void restingOnAFixShowsItOnThePlanAndChangesNothing() {
    goToTheFirstFinding();
    Plan broken = rig.plan();
    var before = picture();
    rig.act(() -> rig.robot().mouseMove(rig.middle("fix-1")));
    assertThat(rig.desk().sight().glance().orElseThrow().fix()).hasValue(0);
    assertThat(rig.plan()).isSameAs(broken);
    assertThat(picture()).as("it is to be seen").isNotEqualTo(before);
    rig.move(new Point(120, 180));
    assertThat(rig.desk().sight().glance()).isEmpty();
    goToTheFirstFinding();
    rig.key(KeyCode.TAB);
    assertThat(rig.desk().sight().glance().orElseThrow().fix()).as("by keys").hasValue(0);
  }

  /** The paper as it is seen, by its pixels. */
  private List<Integer> picture() {
    return Rig.get(
        () -> {
          var paper = rig.designer().pane().plan().snapshot(null, null);
          var reader = paper.getPixelReader();
          List<Integer> pixels = new java.util.ArrayList<>();
          for (int y = 0; y < paper.getHeight(); y++) {
            for (int x = 0; x < paper.getWidth(); x++) {
              pixels.add(reader.getArgb(x, y));
            }
          }
          return pixels;
        });
  }

  @Test
  void pageDownGoesFromFindingToFinding() {
    int all = rig.desk().laying().laid().orElseThrow().findings().size();
    rig.click(new Point(-30, -30)).key(KeyCode.PAGE_DOWN);
    assertThat(rig.desk().sight().finding()).hasValue(1);
    rig.key(KeyCode.PAGE_UP);
    assertThat(rig.desk().sight().finding()).hasValue(all);
    rig.key(KeyCode.PAGE_DOWN);
    assertThat(rig.desk().sight().finding()).hasValue(1);
    rig.clickOn("finding-1").key(KeyCode.PAGE_DOWN);
    assertThat(rig.desk().sight().finding()).as("in the list too").hasValue(all == 1 ? 1 : 2);
  }

  @Test
  void whereNothingWasFoundTheListSaysSo() {
    goToTheFirstFinding();
    long laid = rig.desk().laying().laid().orElseThrow().generation();
    rig.act(() -> rig.designer().board().change(d -> d.offered(new Offer(laid, 1, List.of()))));
    assertThat(rig.text("fix-none")).startsWith("No small change mends this");
    rig.key(KeyCode.PAGE_DOWN).click(new Point(-30, -30));
    assertThat(rig.desk().sight().finding()).isEmpty();
    assertThat(rig.text("more-1")).isEqualTo("No small change mends this. What else?");
    rig.clickOn("finding-1");
    assertThat(rig.has("fix-none")).as("it is not looked for again").isTrue();
  }
}
