package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Joints of a slab of 20 by 30 ft drawn, turned and made another kind by mouse and keys. */
@ExtendWith(NeedsWindow.class)
class JointsByHandInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawASlab() {
    rig = new Rig(1280, 800).drawn("20'", "30' turn left", "20' turn left").clickOn("step-joints");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Slab slab() {
    return rig.plan().slabs().getFirst();
  }

  private Joint across() {
    return slab().joints().stream()
        .filter(JointSlide::canSlide)
        .filter(j -> Math.abs(j.path().start().y() - j.path().end().y()) < 1)
        .findFirst()
        .orElseThrow();
  }

  private Joint locked() {
    assertThat(slab().lockedJoints()).hasSize(1);
    return slab().lockedJoints().getFirst();
  }

  private static Point feet(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  @Test
  void aJointIsDrawnFromSideToSideAndTheOthersAreLaidRoundIt() {
    rig.act(() -> rig.designer().pane().plan().requestFocus());
    rig.key(KeyCode.CONTROL, KeyCode.J);
    assertThat(rig.text("facts-title")).isEqualTo("New joint");
    rig.click(feet(0, 12)).click(feet(12, 12)).laid();
    assertThat(locked().path().start()).isEqualTo(feet(0, 12));
    assertThat(locked().path().end().distance(feet(20, 12))).isLessThan(1e-6);
    assertThat(rig.text("undo")).contains("add a joint");
    assertThat(rig.desk().picked()).isEqualTo(new Pick.AtJoint(slab().id(), locked().id()));
    rig.clickOn("deed-unlock").laid();
    assertThat(slab().lockedJoints()).isEmpty();
  }

  @Test
  void anEndIsDraggedWhileTheOtherStays() {
    Joint joint = across();
    rig.click(joint.path().start().towards(joint.path().end(), 0.2));
    Point end = joint.path().end();
    rig.drag(end, end.plus(new Point(0, 5)), end.plus(new Point(-1, 14))).laid();
    assertThat(locked().path().start()).isEqualTo(joint.path().start());
    assertThat(locked().path().end().y()).isCloseTo(end.y() + 14, within(4.0));
    assertThat(locked().path().end().x()).isCloseTo(end.x(), within(1e-6));
    assertThat(rig.text("undo")).contains("move joint");
  }

  @Test
  void aDigitTypesItsMarkAndTheWayOnIsTypedToo() {
    Joint joint = across();
    rig.click(joint.path().start().towards(joint.path().end(), 0.2));
    rig.type("9'6").key(KeyCode.ENTER).laid();
    assertThat(locked().path().start().y()).isCloseTo(114, within(1e-6));
    double next =
        slab().joints().stream()
            .filter(j -> JointSlide.canSlide(j) && !j.locked())
            .flatMap(j -> Stream.of(j.path().start(), j.path().end()))
            .filter(p -> Math.abs(p.x()) < 1 && p.y() > 115)
            .mapToDouble(Point::y)
            .min()
            .orElse(360);
    rig.fill("joint-onward", "9'").laid();
    assertThat(locked().path().start().y()).isCloseTo(next - 108, within(1e-6));
  }

  @Test
  void aJointIsMadeAConstructionJointAndStaysOne() {
    Joint joint = across();
    rig.click(joint.path().start().towards(joint.path().end(), 0.2));
    rig.clickOn("row-joint-kind").key(KeyCode.DOWN).key(KeyCode.ENTER).laid();
    assertThat(locked().kind()).isEqualTo(JointKind.CONSTRUCTION);
    assertThat(locked().path()).isEqualTo(joint.path());
    assertThat(rig.text("undo")).contains("kind of joint");
    rig.clickOn("undo").laid();
    assertThat(slab().joints()).noneMatch(j -> j.kind() == JointKind.CONSTRUCTION);
  }

  @Test
  void pageDownGoesFromJointToJointAndDeleteTakesOneOut() {
    rig.act(() -> rig.designer().pane().plan().requestFocus());
    rig.key(KeyCode.ESCAPE).key(KeyCode.PAGE_UP);
    assertThat(rig.desk().picked()).isInstanceOf(Pick.AtJoint.class);
    int before = slab().joints().size();
    rig.key(KeyCode.DELETE).laid();
    assertThat(slab().joints().size()).isLessThan(before);
    assertThat(rig.text("undo")).contains("take out joint");
    assertThat(rig.desk().sight().step()).isEqualTo(Step.JOINTS);
  }
}
