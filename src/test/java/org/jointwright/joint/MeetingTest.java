package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class MeetingTest {
  private static final Slab DRIVE = rectangle("drive", 0, 0, 240, 360);

  @Test
  void slabsThatShareAnEdgeMeetAlongWhatBothHave() {
    List<Meeting> met = Meeting.of(plan(DRIVE, rectangle("walk", -60, 360, 300, 408)));
    assertThat(met).hasSize(1);
    assertThat(met.getFirst().firstEdge()).isEqualTo(2);
    assertThat(met.getFirst().secondEdge()).isZero();
    assertThat(met.getFirst().stretch().start()).isEqualTo(new Point(240, 360));
    assertThat(met.getFirst().stretch().end()).isEqualTo(new Point(0, 360));
  }

  @Test
  void gapJustWithinTheToleranceIsAMeetingAndJustOverIsNone() {
    assertThat(Meeting.of(plan(DRIVE, rectangle("walk", 0, 360.45, 240, 400)))).hasSize(1);
    assertThat(Meeting.of(plan(DRIVE, rectangle("walk", 0, 360.55, 240, 400)))).isEmpty();
  }

  @Test
  void slabsThatTouchAtACornerDoNotMeet() {
    assertThat(Meeting.of(plan(DRIVE, rectangle("walk", 240, 360, 300, 400)))).isEmpty();
  }

  @Test
  void slabsInsideOneAnotherAcrossTheCornerDoNotMeet() {
    Slab turned = Slab.of("walk", Outline.of(List.of(p(240, 0), p(400, -100), p(400, 100))));
    assertThat(Meeting.of(plan(DRIVE, turned))).isEmpty();
  }

  @Test
  void slabsMeetAlongACommonArc() {
    Slab pad =
        Slab.of("pad", new Outline(List.of(Vertex.at(p(0, 0)), Vertex.arc(p(100, 0), p(50, 50)))));
    Slab apron =
        Slab.of(
            "apron",
            new Outline(
                List.of(
                    Vertex.arc(p(0, 0), p(50, 50)),
                    Vertex.at(p(100, 0)),
                    Vertex.at(p(150, 0)),
                    Vertex.at(p(150, 150)),
                    Vertex.at(p(0, 150)))));
    assertThat(Meeting.of(plan(pad, apron))).hasSize(1);
  }

  @Test
  void whatThePlanSaysOfEitherEdgeHoldsForBoth() {
    Slab walk = rectangle("walk", 0, 360, 240, 408);
    Plan plain = plan(DRIVE, walk);
    assertThat(Meeting.of(plain).getFirst().needsIsolation(plain)).isFalse();
    Plan held = plan(DRIVE, walk.withEdges(Map.of(0, EdgeSetting.against(Against.CONCRETE))));
    assertThat(Meeting.of(held).getFirst().needsIsolation(held)).isTrue();
  }

  private static Plan plan(Slab... slabs) {
    return Plan.EMPTY.withSlabs(List.of(slabs));
  }

  private static Slab rectangle(String id, double x0, double y0, double x1, double y1) {
    return Slab.of(id, Outline.of(List.of(p(x0, y0), p(x1, y0), p(x1, y1), p(x0, y1))));
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
