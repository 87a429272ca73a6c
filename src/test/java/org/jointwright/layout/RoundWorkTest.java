package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class RoundWorkTest {
  private static SlabLayout laid(Outline outline) {
    return LayoutEngine.lay(plan(outline)).slabs().getFirst();
  }

  private static Plan plan(Outline outline) {
    return Plan.EMPTY.withSlabs(List.of(Slab.of("slab", outline)));
  }

  private static List<Edge> joints(SlabLayout slab) {
    return slab.joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .map(Joint::path)
        .map(p -> p.edges().getFirst())
        .toList();
  }

  /** A line along a curved drive is one concentric arc in each bend, and its ribs are radial. */
  @Test
  void curvedDriveHasOneArcInEachBendAndRadialRibs() {
    SlabLayout slab = laid(RoundPlans.sCurve(300, 132, Math.toRadians(50)));
    List<Arc> sides =
        slab.slab().outline().ring().edges().stream()
            .filter(e -> e instanceof Arc)
            .map(Arc.class::cast)
            .toList();
    assertThat(joints(slab)).filteredOn(e -> e instanceof Arc).hasSize(2);
    for (Edge rib : joints(slab)) {
      if (rib instanceof Segment s) {
        double least =
            sides.stream()
                .mapToDouble(
                    a -> Math.abs(a.centre().minus(s.start()).unit().cross(s.direction(0))))
                .min()
                .orElseThrow();
        assertThat(Math.toDegrees(Math.asin(least))).isCloseTo(0, within(1.0));
      }
    }
  }

  private static Outline corner(double radius) {
    double bow = radius * (1 - Math.sqrt(0.5));
    return new Outline(
        List.of(
            Vertex.at(new Point(0, 0)),
            Vertex.at(new Point(230, 0)),
            Vertex.at(new Point(230, 110)),
            Vertex.arc(new Point(110 + radius, 110), new Point(110 + bow, 110 + bow)),
            Vertex.at(new Point(110, 110 + radius)),
            Vertex.at(new Point(110, 230)),
            Vertex.at(new Point(0, 230))));
  }

  /** Source: own choice (rules of inside corners): a radius under 6 in is a corner rounded off. */
  @Test
  void jointMeetsAnInsideCornerWhoseEdgeIsRoundedOff() {
    Point middle = new Point(110 + 4 * 0.293, 110 + 4 * 0.293);
    assertThat(joints(laid(corner(4))))
        .anyMatch(e -> e.start().distance(middle) < 4 || e.end().distance(middle) < 4);
  }

  private static Outline bevelled(double bevel) {
    return Outline.of(
        List.of(
            new Point(0, 0),
            new Point(92, 0),
            new Point(92, 62),
            new Point(62 + bevel, 62),
            new Point(62, 62 + bevel),
            new Point(62, 92),
            new Point(0, 92)));
  }

  /** Source: own choice (rules of inside corners): corners within 6 in of each other are one. */
  @Test
  void oneJointServesTwoInsideCornersWithinSixInches() {
    assertThat(joints(laid(bevelled(3)))).hasSize(1);
    assertThat(joints(laid(bevelled(4)))).hasSize(1);
  }

  @Test
  void insideCornersFartherApartEachHaveAJoint() {
    assertThat(joints(laid(bevelled(8)))).hasSizeGreaterThan(1);
  }

  /** Common practice, no source: joints from an opening are alike on all its sides. */
  @Test
  void jointsFromACentredOpeningAreAStarAlikeOnAllSides() {
    Outline square = square(0, 288);
    Slab slab =
        Slab.of("slab", square)
            .withThickness(Length.inches(4))
            .withOpenings(List.of(new Opening(square(120, 168), Map.of(), Kept.NOTHING)));
    Plan plan = Plan.EMPTY.withSlabs(List.of(slab));
    List<Edge> star = joints(LayoutEngine.lay(plan).slabs().getFirst());
    assertThat(star).hasSize(8);
    for (Edge e : star) {
      assertThat(star).anyMatch(o -> same(o, e, p -> new Point(288 - p.x(), p.y())));
      assertThat(star).anyMatch(o -> same(o, e, p -> new Point(p.y(), p.x())));
    }
  }

  private static Outline square(double from, double to) {
    return Outline.of(
        List.of(
            new Point(from, from), new Point(to, from), new Point(to, to), new Point(from, to)));
  }

  private static boolean same(Edge a, Edge b, UnaryOperator<Point> moved) {
    Point start = moved.apply(b.start());
    Point end = moved.apply(b.end());
    return (a.start().distance(start) < 0.1 && a.end().distance(end) < 0.1)
        || (a.start().distance(end) < 0.1 && a.end().distance(start) < 0.1);
  }
}
