package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Joints drawn by hand: where they run, and what draws them. */
class JointRunTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Outline box(double x, double y, double wide, double high) {
    return Outline.of(List.of(p(x, y), p(x + wide, y), p(x + wide, y + high), p(x, y + high)));
  }

  private static final Joint ACROSS =
      Joint.of("J1", JointKind.CONTRACTION, Path.straight(p(0, 120), p(240, 120)), Purpose.SPACING);

  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of("drive", box(0, 0, 240, 360))
                  .withOpenings(List.of(new Opening(box(100, 200, 40, 40), Map.of(), Kept.NOTHING)))
                  .withLaid(List.of(ACROSS), List.of())));

  private static Path run(double x1, double y1, double x2, double y2) {
    return JointRun.between(PLAN, p(x1, y1), p(x2, y2)).orElseThrow().path();
  }

  @Test
  void anEndInTheConcreteRunsOnToTheNextLine() {
    assertThat(run(60, 20, 60, 90)).isEqualTo(Path.straight(p(60, 0), p(60, 120)));
    assertThat(run(60, 130, 60, 300)).isEqualTo(Path.straight(p(60, 120), p(60, 360)));
  }

  /** Half of what is left of the side above the joint is at 240 in; the joint comes from 234. */
  @Test
  void squareAcrossIsCaughtBeforeAnEvenPlaceBesideIt() {
    Draft line = Draft.begun(Drawn.JOINT).begunAt(p(240, 234));
    Attraction pull = Attraction.joint(PLAN, line, 1);
    assertThat(pull.at(p(2, 236)).at()).isEqualTo(p(0, 234));
    assertThat(pull.at(p(2, 238.8)).at()).isEqualTo(p(0, 234));
    assertThat(pull.at(p(2, 239)).at()).isEqualTo(p(0, 240));
    assertThat(pull.at(p(2, 241)).at()).isEqualTo(p(0, 240));
  }

  @Test
  void anEndOnAJointStaysThereAndOneBeyondTheConcreteIsCutOff() {
    assertThat(run(60, -30, 60, 120.3)).isEqualTo(Path.straight(p(60, 0), p(60, 120)));
    assertThat(run(60, -30, 60, 400)).isEqualTo(Path.straight(p(60, 0), p(60, 360)));
    assertThat(run(120, 130, 120, 180))
        .as("an opening ends it")
        .isEqualTo(Path.straight(p(120, 120), p(120, 200)));
  }

  @Test
  void outsideOrTooShortThereIsNone() {
    assertThat(JointRun.between(PLAN, p(300, 0), p(300, 100))).isEmpty();
    assertThat(JointRun.between(PLAN, p(120, 210), p(120, 230))).as("in the opening").isEmpty();
    assertThat(JointRun.between(PLAN, p(0, 3), p(3, 0))).as("a chip off a corner").isEmpty();
    assertThat(JointRun.between(PLAN, p(60, 60), p(60, 60))).isEmpty();
  }

  @Test
  void aFixedEndStaysExactlyWhereItIs() {
    assertThat(JointRun.from(PLAN, "drive", p(0, 60), p(100, 70)).orElseThrow())
        .satisfies(
            path -> {
              assertThat(path.start()).isEqualTo(p(0, 60));
              assertThat(path.end().distance(p(240, 84))).isLessThan(1e-9);
            });
    assertThat(JointRun.from(PLAN, "drive", p(0, 60), p(-40, 60))).as("away from it").isEmpty();
  }

  @Test
  void aDrawnJointIsLockedAndPicked() {
    Desk desk = Drafting.begin(Desk.begun(PLAN).fitted(), Drawn.JOINT);
    assertThat(desk.sight().step()).isEqualTo(Step.JOINTS);
    for (Point q : List.of(p(71, 10), p(71, 80))) {
      Point paper = desk.viewport().toPaper(q);
      desk = Drafting.click(desk, Pointer.on(desk.viewport(), paper.x(), paper.y(), true), "slab");
    }
    Slab slab = desk.plan().slabs().getFirst();
    assertThat(slab.lockedJoints()).hasSize(1);
    Joint joint = slab.lockedJoints().getFirst();
    assertThat(joint.path().start().x()).isCloseTo(71, within(1e-6));
    assertThat(joint.path().length()).isCloseTo(120, within(1e-6));
    assertThat(desk.picked()).isEqualTo(new Pick.AtJoint("drive", joint.id()));
    assertThat(desk.undone().plan()).isEqualTo(PLAN);
  }

  private static Pencil pencil(double x, double y) {
    return Attraction.drawing(PLAN, Draft.begun(Drawn.JOINT), 0.5).at(p(x, y));
  }

  @Test
  void cornersJointsAndEvenPlacesDrawIt() {
    assertThat(pencil(99, 198).at()).isEqualTo(p(100, 200));
    assertThat(pencil(2, 122).guides())
        .extracting(Guide::kind)
        .containsExactly(Guide.Kind.AT_JOINT);
    Pencil third = pencil(1, 201);
    assertThat(third.at().distance(p(0, 200))).isLessThan(1e-9);
    assertThat(third.guides())
        .singleElement()
        .satisfies(
            g -> {
              assertThat(g.kind()).isEqualTo(Guide.Kind.EVEN);
              assertThat(g.length()).as("from the joint before").isCloseTo(80, within(1e-9));
            });
    assertThat(pencil(239, 60).at().distance(p(240, 60))).as("half way").isLessThan(1e-9);
  }
}
