package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.Pick;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Purpose;
import org.jointwright.reason.LikelyCrack;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** An L of 36 by 44 ft asked in the real window why its joints are there. */
@ExtendWith(NeedsWindow.class)
class WhyHereInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawAnEll() {
    rig = new Rig(1280, 800);
    for (String side :
        List.of("36'", "22' turn left", "22' turn left", "22' turn right", "14' turn left")) {
      rig.type(side).key(KeyCode.ENTER);
    }
    rig.type("close").key(KeyCode.ENTER).laid();
    rig.clickOn("step-joints");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private List<Joint> joints() {
    return rig.plan().slabs().getFirst().joints();
  }

  private void pick(Joint joint) {
    rig.click(joint.path().start().towards(joint.path().end(), 0.3));
    rig.until(
        () ->
            rig.designer().board().desk().picked() instanceof Pick.AtJoint p
                && rig.designer().board().desk().laying().whyHere(p).isPresent());
    Rig.pulses(3);
  }

  private List<String> notes() {
    Parent box = (Parent) rig.node("facts-notes");
    return Rig.get(() -> texts(box));
  }

  private static List<String> texts(Parent parent) {
    return parent.getChildrenUnmodifiable().stream().flatMap(n -> text(n).stream()).toList();
  }

  private static List<String> text(Node node) {
    return switch (node) {
      case Label l -> List.of(l.getText());
      case Parent p -> texts(p);
      default -> List.of();
    };
  }

  @Test
  void aJointFromTheInsideCornerSaysSoAndShowsTheLikelyCrack() {
    Joint joint =
        joints().stream()
            .filter(j -> j.purpose() == Purpose.INSIDE_CORNER)
            .findFirst()
            .orElseThrow();
    pick(joint);
    List<String> notes = notes();
    assertThat(notes.getFirst()).isEqualTo("Why here?");
    assertThat(notes).contains("It starts at inside corner D.");
    assertThat(notes).anyMatch(n -> n.startsWith("Without it ") && n.contains("are the most"));
    assertThat(notes).anyMatch(n -> n.contains("likely crack") && n.contains("not computed"));
    assertThat(notes.getLast()).startsWith("Rule M");
    LikelyCrack crack =
        rig.desk()
            .laying()
            .whyHere((Pick.AtJoint) rig.desk().picked())
            .orElseThrow()
            .cracks()
            .getFirst();
    assertThat(crack.from().distance(new Point(168, 264))).isLessThan(0.1);
  }

  @Test
  void theAnswerFollowsTheJointThatIsPickedAndTheJointThatIsLocked() {
    Joint first = joints().getFirst();
    pick(first);
    List<String> before = notes();
    Joint last = joints().getLast();
    assertThat(last).isNotEqualTo(first);
    pick(last);
    assertThat(notes()).isNotEqualTo(before);
    rig.clickOn("deed-lock").laid();
    rig.until(
        () ->
            rig.designer().board().desk().picked() instanceof Pick.AtJoint p
                && rig.designer().board().desk().laying().whyHere(p).isPresent());
    assertThat(notes()).anyMatch(n -> n.startsWith("It is locked"));
  }
}
