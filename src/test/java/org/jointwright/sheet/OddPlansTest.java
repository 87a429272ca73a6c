package org.jointwright.sheet;

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
import org.jointwright.sheet.page.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet can be drawn of any plan, however odd. */
class OddPlansTest {
  private static final Slab SLAB = LaidPlans.plan("rect_drive_20x40_4in").slabs().getFirst();

  private static List<Page> pages(Slab... slabs) {
    return LaidPlans.pages(Plan.EMPTY.withSlabs(List.of(slabs)));
  }

  @Test
  void planWithNothingInItGivesOnePage() {
    assertThat(pages()).hasSize(1);
  }

  @Test
  void slabWithoutJointsGivesOnePage() {
    assertThat(pages(SLAB.withLaid(List.of(), List.of()))).hasSize(1);
  }

  @Test
  void jointsThatHangInTheAirBendOrLeaveTheSlabAreDrawn() {
    List<Joint> odd =
        List.of(
            joint(JointKind.CONTRACTION, new Point(30, 30), new Point(90, 100)),
            joint(
                JointKind.CONTRACTION, new Point(0, 200), new Point(100, 230), new Point(240, 260)),
            joint(JointKind.ISOLATION, new Point(50, 300), new Point(100, 300), new Point(99, 350)),
            joint(JointKind.CONTRACTION, new Point(-30, 100), new Point(500, 100)));
    assertThat(pages(SLAB.withLaid(odd, List.of()))).isNotEmpty();
  }

  @Test
  void lockedJointsLookLikeTheRest() {
    List<Joint> locked = SLAB.joints().stream().map(j -> j.withLocked(true)).toList();
    assertThat(SLAB.joints()).isNotEqualTo(locked);
    assertThat(pages(SLAB.withLaid(locked, SLAB.boxOuts())))
        .isEqualTo(pages(SLAB.withLaid(SLAB.joints(), SLAB.boxOuts())));
  }

  private static Joint joint(JointKind kind, Point... points) {
    String id = "J" + points[0];
    return Joint.of(id, kind, Path.through(List.of(points)), Purpose.SPACING);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 1, 2000})
  void slabOfAnySizeStaysInsideTheMargins(double factor) {
    List<Point> corners =
        SLAB.outline().ring().vertices().stream().map(p -> p.times(factor)).toList();
    assertThat(pages(Slab.of("x".repeat(500), Outline.of(corners)))).hasSize(1);
  }
}
