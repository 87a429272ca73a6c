package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class JointSlideTest {
  private static final Joint UPRIGHT = joint("J1", new Point(100, 0), new Point(100, 120));
  private static final Joint TEE = joint("J2", new Point(100, 60), new Point(240, 60));

  private static Joint joint(String id, Point from, Point to) {
    return Joint.of(id, JointKind.CONTRACTION, Path.straight(from, to), Purpose.SPACING);
  }

  /** A trapezoid: its right side leans. */
  private static Plan plan() {
    Slab slab =
        Slab.of(
                "drive",
                Outline.of(
                    List.of(
                        new Point(0, 0),
                        new Point(260, 0),
                        new Point(220, 120),
                        new Point(0, 120))))
            .withLaid(List.of(UPRIGHT, TEE), List.of());
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  @Test
  void aJointSlidesSidewaysAndKeepsToTheOutline() {
    Path slid = JointSlide.by(plan(), "drive", UPRIGHT, new Point(30, 55)).orElseThrow();
    assertThat(slid.start().distance(new Point(130, 0))).isLessThan(1e-9);
    assertThat(slid.end().distance(new Point(130, 120))).isLessThan(1e-9);
  }

  @Test
  void anEndThatStandsOnAnotherJointStaysOnIt() {
    Path slid = JointSlide.by(plan(), "drive", TEE, new Point(0, 30)).orElseThrow();
    assertThat(slid.start().distance(new Point(100, 90))).isLessThan(1e-9);
    assertThat(slid.end().distance(new Point(230, 90))).isLessThan(1e-9);
  }

  @Test
  void outsideTheSlabThereIsNoPlace() {
    assertThat(JointSlide.by(plan(), "drive", UPRIGHT, new Point(-150, 0))).isEmpty();
  }
}
