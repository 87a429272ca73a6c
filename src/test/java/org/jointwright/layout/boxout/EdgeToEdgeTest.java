package org.jointwright.layout.boxout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Loop;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EdgeToEdgeTest {
  private static final Slab SLAB = Slab.of("slab", rectangle(0, 0, 144, 240));

  private static Outline rectangle(double left, double low, double right, double high) {
    return Outline.of(
        List.of(
            new Point(left, low),
            new Point(right, low),
            new Point(right, high),
            new Point(left, high)));
  }

  private static FixedObject drain(double left, double low, double right, double high) {
    FixedShape shape = new FixedShape.Outlined(rectangle(left, low, right, high), Kept.NOTHING);
    return new FixedObject("drain", "slab", FixedKind.DRAIN, shape, Kept.NOTHING);
  }

  private static Around first(Slab slab, FixedObject drain) {
    return BoxOuts.choices(slab, List.of(drain), false).getFirst().getFirst();
  }

  /** The loops of a slab with a box-out taken out of it. */
  private static List<List<Loop>> parts(Slab slab, Around way) {
    List<Loop> loops = new ArrayList<>();
    loops.add(loop(slab.outline().ring(), -1));
    for (Opening o : slab.openings()) {
      loops.add(loop(o.outline().ring().counterClockwise().reversed(), -2));
    }
    Splice.cutOut(
        loops, loop(BoxOuts.rings(way.boxes()).getFirst().counterClockwise().reversed(), -3));
    return Splice.parts(loops);
  }

  private static Loop loop(Ring ring, int tag) {
    return new Loop(ring.edges(), ring.edges().stream().map(e -> tag).toList());
  }

  private static double area(List<Loop> part) {
    return part.stream().mapToDouble(l -> new Ring(l.edges()).signedArea()).sum();
  }

  @ParameterizedTest
  // From edge to edge, and stopping short of both, of one, by less than a panel could be.
  @CsvSource({"0, 144", "4, 140", "0, 134", "14, 144"})
  void drainFromEdgeToEdgePartsTheSlab(double left, double right) {
    Around way = first(SLAB, drain(left, 100, right, 106));
    Ring ring = way.boxes().getFirst().outline().ring();
    assertThat(ring.area()).isCloseTo(144 * 12, within(0.1));
    assertThat(ring.box().minY()).isCloseTo(97, within(1e-6));
    assertThat(BoxOuts.filler(way.boxes(), SLAB))
        .hasSize(2)
        .allSatisfy(j -> assertThat(j.path().length()).isCloseTo(144, within(1e-6)));
    assertThat(parts(SLAB, way)).hasSize(2);
    assertThat(parts(SLAB, way).stream().mapToDouble(EdgeToEdgeTest::area).sum())
        .isCloseTo(144 * 228, within(0.1));
  }

  @Test
  void drainThatStopsTwoFeetShortHasRoundEnds() {
    Ring ring = first(SLAB, drain(24, 100, 120, 106)).boxes().getFirst().outline().ring();
    assertThat(ring.edges()).filteredOn(e -> e.turn() != 0).hasSize(2);
    assertThat(parts(SLAB, first(SLAB, drain(24, 100, 120, 106)))).hasSize(1);
  }

  @Test
  void drainFromOneEdgeHasOneRoundEnd() {
    Around way = first(SLAB, drain(0, 100, 80, 106));
    Ring ring = way.boxes().getFirst().outline().ring();
    assertThat(ring.edges()).filteredOn(e -> e.turn() != 0).hasSize(1);
    assertThat(BoxOuts.filler(way.boxes(), SLAB)).hasSize(1);
    assertThat(parts(SLAB, way)).hasSize(1);
  }

  @Test
  void drainAlongAnEdgeReachesThatEdgeToo() {
    Around way = first(SLAB, drain(0, 0, 144, 6));
    Ring ring = way.boxes().getFirst().outline().ring();
    assertThat(ring.area()).isCloseTo(144 * 9, within(0.1));
    assertThat(parts(SLAB, way)).hasSize(1);
    assertThat(area(parts(SLAB, way).getFirst())).isCloseTo(144 * 231, within(0.1));
  }

  @Test
  void drainFromAnEdgeToAnOpeningJoinsThemAndPartsNothing() {
    Slab slab =
        SLAB.withOpenings(
            List.of(new Opening(rectangle(72, 80, 108, 126), java.util.Map.of(), Kept.NOTHING)));
    Around way = first(slab, drain(0, 100, 72, 106));
    assertThat(BoxOuts.filler(way.boxes(), slab)).hasSize(2);
    List<List<Loop>> parts = parts(slab, way);
    assertThat(parts).hasSize(1);
    assertThat(parts.getFirst()).hasSize(1);
    assertThat(area(parts.getFirst())).isCloseTo(144 * 240 - 36 * 46 - 72 * 12, within(0.1));
  }

  @Test
  void partKeepsTheOpeningThatStandsInIt() {
    Slab slab =
        SLAB.withOpenings(
            List.of(new Opening(rectangle(40, 20, 60, 40), java.util.Map.of(), Kept.NOTHING)));
    List<List<Loop>> parts = parts(slab, first(slab, drain(0, 100, 144, 106)));
    assertThat(parts).hasSize(2);
    assertThat(parts.stream().mapToInt(List::size)).containsExactlyInAnyOrder(1, 2);
    List<Loop> lower = parts.stream().filter(p -> p.size() == 2).findFirst().orElseThrow();
    assertThat(lower.getFirst().edges()).extracting(Edge::start).allMatch(p -> p.y() < 97.01);
  }
}
