package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.search.Score;
import org.jointwright.layout.search.Sights;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class MirrorsTest {
  private static final Slab RECTANGLE = slab(0, 0, 20, 0, 20, 12, 0, 12);

  /** A slab with corners given in feet. */
  private static Slab slab(double... feet) {
    return Slab.of("slab", Symmetric.outline(feet));
  }

  private static Draft start(Slab slab) {
    return Draft.of(
        Grounds.of(slab, List.of(), Limits.of(slab), Bench.at(slab.outline().ring().box())));
  }

  private static List<Mirror> axes(Slab slab, Point... seen) {
    Score score = new Score(List.of(), new Sights(List.of(seen)));
    return Mirrors.of(slab, start(slab), score);
  }

  @Test
  void axesAreCountedOnceEach() {
    assertThat(axes(RECTANGLE)).hasSize(2);
    assertThat(axes(slab(0, 0, 12, 0, 12, 12, 0, 12))).hasSize(4);
    assertThat(axes(slab(0, 0, 26, 0, 26, 11, 11, 11, 11, 26, 0, 26))).hasSize(1);
    assertThat(axes(slab(0, 0, 24, 0, 18, 12, 6, 12))).hasSize(1);
    assertThat(axes(slab(0, 0, 26, 0, 26, 11, 11, 11, 11, 20, 0, 20))).isEmpty();
    assertThat(axes(slab(0, 0, 20, 0, 25, 12, 5, 12))).isEmpty();
  }

  @Test
  void thoseAlongTheSidesComeFirst() {
    List<Mirror> axes = axes(slab(0, 0, 12, 0, 12, 12, 0, 12));
    assertThat(axes.subList(0, 2)).allMatch(m -> Math.abs(m.along().x() * m.along().y()) < 1e-9);
  }

  @Test
  void aHalfRoundHasOneAndADiscNone() {
    Vertex left = Vertex.at(new Point(-96, 0));
    Vertex over = Vertex.arc(new Point(96, 0), new Point(0, 96));
    Vertex under = Vertex.arc(new Point(-96, 0), new Point(0, -96));
    assertThat(axes(Slab.of("slab", new Outline(List.of(over, left))))).hasSize(1);
    assertThat(axes(Slab.of("slab", new Outline(List.of(over, under))))).isEmpty();
  }

  @Test
  void aSideThatIsOffByMoreThanTheTapeReadsMirrorsNoMore() {
    assertThat(axes(slab(0, 0, 24, 0, 18.01, 12, 6, 12))).hasSize(1);
    assertThat(axes(slab(0, 0, 24, 0, 18.05, 12, 6, 12))).isEmpty();
  }

  @Test
  void whatOneEdgeIsAgainstCounts() {
    Map<Integer, EdgeSetting> short1 = Map.of(1, EdgeSetting.against(Against.BUILDING));
    assertThat(axes(RECTANGLE.withEdges(short1)))
        .singleElement()
        .matches(m -> Math.abs(m.along().y()) < 1e-9);
  }

  @Test
  void openingsCount() {
    Opening middle =
        new Opening(Symmetric.outline(9, 5, 11, 5, 11, 7, 9, 7), Map.of(), Kept.NOTHING);
    Opening aside = new Opening(Symmetric.outline(5, 4, 7, 4, 7, 6, 5, 6), Map.of(), Kept.NOTHING);
    assertThat(axes(RECTANGLE.withOpenings(List.of(middle)))).hasSize(2);
    assertThat(axes(RECTANGLE.withOpenings(List.of(aside)))).isEmpty();
  }

  @Test
  void placesToMeetAndTheUsersJointsCount() {
    assertThat(axes(RECTANGLE, new Point(36, 0), new Point(204, 0))).hasSize(1);
    assertThat(axes(RECTANGLE, new Point(36, 0))).isEmpty();
    Draft held =
        start(RECTANGLE)
            .hold(new Segment(new Point(60, 0), new Point(60, 144)), JointKind.CONTRACTION);
    assertThat(Mirrors.of(RECTANGLE, held, new Score(List.of())))
        .singleElement()
        .matches(m -> Math.abs(m.along().y()) < 1e-9);
  }
}
