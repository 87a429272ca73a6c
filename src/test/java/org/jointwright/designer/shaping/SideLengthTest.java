package org.jointwright.designer.shaping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.jointwright.designer.shaping.SideLength.Other;
import org.jointwright.designer.shaping.SideLength.Way;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A tape correction: what comes along with the end of a side whose length is typed anew. */
class SideLengthTest {
  /** 26 ft along the house, 16 ft down, 14 ft across, then a bow back up to the right side. */
  private static final Slab PATIO =
      Slab.of(
          "patio",
          new Outline(
              List.of(
                  Vertex.at(new Point(0, 0)),
                  Vertex.at(new Point(0, -192)),
                  Vertex.arc(new Point(168, -192), new Point(252, -172)),
                  Vertex.at(new Point(312, -120)),
                  Vertex.at(new Point(312, 0)))));

  private static final Ref LEFT = new Ref("patio", Ref.OUTLINE, 0);

  private static Slab slab(String id, double... xy) {
    List<Point> points =
        IntStream.range(0, xy.length / 2)
            .mapToObj(i -> new Point(xy[2 * i], xy[2 * i + 1]))
            .toList();
    return Slab.of(id, Outline.of(points));
  }

  private static Desk with(Slab... slabs) {
    return Desk.begun(Plan.EMPTY.withSlabs(List.of(slabs)));
  }

  private static Desk set(Desk desk, Ref side, double feet) {
    return SideLength.set(desk, side, Length.feet(feet)).orElseThrow();
  }

  private static Edge edge(Desk desk, String slab, int index) {
    return desk.plan().slab(slab).orElseThrow().outline().ring().edges().get(index);
  }

  @Test
  void theSquareSideNextToItComesAlongThoughABowIsBehindIt() {
    Desk after = set(with(PATIO), LEFT, 17);
    assertThat(edge(after, "patio", 0).length()).isCloseTo(204, within(1e-9));
    Edge bottom = edge(after, "patio", 1);
    assertThat(bottom.start()).isEqualTo(new Point(0, -204));
    assertThat(bottom.end()).isEqualTo(new Point(168, -204));
    assertThat(edge(after, "patio", 3).start())
        .as("the rest stays")
        .isEqualTo(new Point(312, -120));
  }

  @Test
  void theOtherWayIsOfferedUntilSomethingElseIsDoneAndBothAreOneStep() {
    Desk before = with(PATIO);
    Desk after = set(before, LEFT, 17);
    Other alone = SideLength.other(after, LEFT).orElseThrow();
    assertThat(alone.way()).isEqualTo(Way.CORNER_ALONE);
    assertThat(edge(alone.desk(), "patio", 1).start()).isEqualTo(new Point(0, -204));
    assertThat(edge(alone.desk(), "patio", 1).end()).isEqualTo(new Point(168, -192));
    assertThat(alone.desk().undone().plan()).isEqualTo(before.plan());
    Other back = SideLength.other(alone.desk(), LEFT).orElseThrow();
    assertThat(back.way()).isEqualTo(Way.NEXT_SIDE);
    assertThat(back.desk().plan()).isEqualTo(after.plan());
    assertThat(SideLength.other(after, new Ref("patio", Ref.OUTLINE, 1))).isEmpty();
    Desk later = after.edited(new SlabEdit.SetThickness("patio", Length.inches(5)));
    assertThat(SideLength.other(later, LEFT)).isEmpty();
  }

  @Test
  void aCornerThatIsNotSquareMovesAloneUnlessTheSidesRunAlongside() {
    Desk kite = with(slab("kite", 0, 0, 240, 0, 300, 150, 60, 260));
    Desk longer = set(kite, new Ref("kite", Ref.OUTLINE, 0), 21);
    assertThat(edge(longer, "kite", 1).end()).isEqualTo(new Point(300, 150));
    assertThat(SideLength.other(longer, new Ref("kite", Ref.OUTLINE, 0)).orElseThrow().way())
        .isEqualTo(Way.NEXT_SIDE);
    Desk leaning = with(slab("leaning", 0, 0, 240, 0, 300, 150, 60, 150));
    Desk wider = set(leaning, new Ref("leaning", Ref.OUTLINE, 0), 21);
    assertThat(edge(wider, "leaning", 1).end()).isEqualTo(new Point(312, 150));
  }

  /** The sine of 1.1 degrees still counts as square, that of 1.2 does not. */
  @Test
  void squareIsWhatIsMeantSo() {
    for (double off : new double[] {1.1, 1.2}) {
      double lean = Math.tan(Math.toRadians(off)) * 200;
      Desk desk = with(slab("pad", 0, 0, 240, 0, 240 + lean, 200, 100, 300));
      Desk longer = set(desk, new Ref("pad", Ref.OUTLINE, 0), 21);
      assertThat(edge(longer, "pad", 1).end().x())
          .isCloseTo(off < 1.15 ? 252 + lean : 240 + lean, within(1e-9));
    }
  }

  @Test
  void aWalkThatHangsOnTheSideGoesWithItAndOneThatIsHeldStays() {
    Slab walk = slab("walk", 39, -192, 39, -400, 81, -400, 81, -192);
    Desk after = set(with(PATIO, walk), LEFT, 17);
    assertThat(edge(after, "walk", 0).start()).isEqualTo(new Point(39, -204));
    assertThat(after.undone().plan()).isEqualTo(with(PATIO, walk).plan());
    Slab toStreet = walk.withEdges(java.util.Map.of(1, EdgeSetting.against(Against.STREET)));
    Desk held = set(with(PATIO, toStreet), LEFT, 17);
    assertThat(edge(held, "walk", 0).start()).isEqualTo(new Point(39, -192));
    assertThat(edge(held, "patio", 0).start()).as("up instead").isEqualTo(new Point(0, 12));
    Slab beyond = slab("beyond", 39, -400, 39, -500, 200, -500, 200, -400);
    assertThat(edge(set(with(PATIO, walk, beyond), LEFT, 17), "walk", 0).start())
        .isEqualTo(new Point(39, -192));
  }

  @Test
  void whereTheNextSideIsHeldTheNearEndMovesWithTheSideBefore() {
    Slab open = slab("pad", 0, 0, 240, 0, 240, 200, 0, 200);
    Ref right = new Ref("pad", Ref.OUTLINE, 1);
    Slab house = open.withEdges(java.util.Map.of(2, EdgeSetting.against(Against.BUILDING)));
    Desk after = set(with(house), right, 17);
    assertThat(edge(after, "pad", 2)).as("at the house").isEqualTo(edge(with(house), "pad", 2));
    assertThat(edge(after, "pad", 0).start()).isEqualTo(new Point(0, -4));
    assertThat(edge(after, "pad", 0).end()).isEqualTo(new Point(240, -4));
    Other alone = SideLength.other(after, right).orElseThrow();
    assertThat(edge(alone.desk(), "pad", 0).start()).isEqualTo(new Point(0, 0));
    assertThat(edge(alone.desk(), "pad", 0).end()).isEqualTo(new Point(240, -4));
    assertThat(SideLength.other(alone.desk(), right).orElseThrow().desk().plan())
        .isEqualTo(after.plan());
    assertThat(edge(set(with(open), right, 17), "pad", 2).start()).isEqualTo(new Point(240, 204));
    Slab both =
        house.withEdges(
            java.util.Map.of(
                0, EdgeSetting.against(Against.STREET), 2, EdgeSetting.against(Against.BUILDING)));
    assertThat(edge(set(with(both), right, 17), "pad", 0).start()).isEqualTo(new Point(0, 0));
  }

  @Test
  void aSideSharedByTwoSlabsOffersTheOtherWayOfItsOwnOnly() {
    Desk desk =
        with(
            slab("one", 0, 0, 240, 0, 240, 200, 0, 200),
            slab("two", 0, -90, 240, -90, 240, 0, 0, 0));
    Ref side = new Ref("one", Ref.OUTLINE, 0);
    Desk after = set(desk, side, 21);
    assertThat(SideLength.other(after, side)).isPresent();
    assertThat(SideLength.other(after, new Ref("two", Ref.OUTLINE, 2))).isEmpty();
  }

  @Test
  void aTriangleHasOneWayOnly() {
    Ref side = new Ref("tip", Ref.OUTLINE, 0);
    Desk longer = set(with(slab("tip", 0, 0, 240, 0, 240, 150)), side, 21);
    assertThat(edge(longer, "tip", 1).end()).isEqualTo(new Point(240, 150));
    assertThat(SideLength.other(longer, side)).isEmpty();
  }

  @Test
  void whatLeavesNoSlabIsRefused() {
    Desk cross = with(slab("pad", 0, 0, 240, 0, 240, 200, 100, 200, 100, 20, 0, 20));
    assertThat(SideLength.set(cross, new Ref("pad", Ref.OUTLINE, 0), Length.feet(0.02))).isEmpty();
  }
}
