package org.jointwright.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A corner joint on request; legs of 12 to 24 in are common practice, no source. */
class CornerJointTest {
  private static final Plan WEDGE =
      new SlabEdit.Add(Slab.of("lot", Outline.of(List.of(p(0, 0), p(240, 0), p(0, 120)))))
          .applyTo(Plan.EMPTY);

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static List<Joint> joints(Plan plan) {
    return plan.slab("lot").orElseThrow().joints();
  }

  @Test
  void bothEndsStandByTheLegsFromTheCorner() {
    Plan plan = new JointEdit.AddCornerJoint("lot", 1, 18).applyTo(WEDGE);
    Joint joint = joints(plan).getFirst();
    assertThat(joint.kind()).isEqualTo(JointKind.CONTRACTION);
    assertThat(joint.purpose()).isEqualTo(Purpose.CORNER);
    assertThat(joint.locked()).isTrue();
    assertThat(joint.path().start().distance(p(240, 0))).isEqualTo(18);
    assertThat(joint.path().start()).isEqualTo(p(222, 0));
    assertThat(joint.path().end().distance(p(240, 0))).isCloseTo(18, within(1e-9));
    assertThat(
            plan.slab("lot")
                .orElseThrow()
                .outline()
                .ring()
                .edges()
                .get(1)
                .distance(joint.path().end()))
        .isLessThan(1e-9);
  }

  private static org.assertj.core.data.Offset<Double> within(double value) {
    return org.assertj.core.data.Offset.offset(value);
  }

  @Test
  void secondAcrossTheSameCornerTakesThePlaceOfTheFirst() {
    Plan once = new JointEdit.AddCornerJoint("lot", 1, 18).applyTo(WEDGE);
    Plan other = new JointEdit.AddCornerJoint("lot", 0, 12).applyTo(once);
    Plan twice = new JointEdit.AddCornerJoint("lot", 1, 24).applyTo(other);
    assertThat(joints(twice)).hasSize(2);
    assertThat(joints(twice)).extracting(Joint::id).doesNotHaveDuplicates();
    assertThat(joints(twice).getLast().path().start()).isEqualTo(p(216, 0));
  }

  @Test
  void otherJointsStay() {
    Joint own =
        Joint.of("J1", JointKind.CONTRACTION, Path.straight(p(60, 0), p(60, 90)), Purpose.SPACING);
    Plan plan = new JointEdit.Add("lot", own).applyTo(WEDGE);
    Plan cut = new JointEdit.AddCornerJoint("lot", 1, 18).applyTo(plan);
    assertThat(joints(cut)).extracting(Joint::id).containsExactly("J1", "J2");
  }

  @Test
  void legsFollowAnArc() {
    Plan plan =
        new SlabEdit.Add(
                Slab.of(
                    "lot",
                    new Outline(
                        List.of(
                            Vertex.at(p(0, 0)),
                            Vertex.arc(p(200, 0), p(160, 90)),
                            Vertex.at(p(0, 120))))))
            .applyTo(Plan.EMPTY);
    Joint joint = joints(new JointEdit.AddCornerJoint("lot", 1, 18).applyTo(plan)).getFirst();
    var arc = plan.slab("lot").orElseThrow().outline().ring().edges().get(1);
    assertThat(arc.nearest(joint.path().end()) * arc.length()).isCloseTo(18, within(1e-6));
    assertThat(arc.distance(joint.path().end())).isLessThan(1e-6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -3, 120, 500})
  void legsThatTheEdgesHaveNoRoomForAreRefused(double legs) {
    assertThatThrownBy(() -> new JointEdit.AddCornerJoint("lot", 0, legs).applyTo(WEDGE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void cornerThatIsNotThereIsRefused() {
    assertThatThrownBy(() -> new JointEdit.AddCornerJoint("lot", 3, 18).applyTo(WEDGE))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new JointEdit.AddCornerJoint("other", 0, 18).applyTo(WEDGE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
