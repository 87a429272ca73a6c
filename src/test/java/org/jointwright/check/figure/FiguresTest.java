package org.jointwright.check.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.LengthUnit;
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

/** Figures of small plans, worked out by hand; all in inches. */
class FiguresTest {
  private static Outline outline(double x, double y, double width, double height) {
    return Outline.of(
        List.of(
            new Point(x, y),
            new Point(x + width, y),
            new Point(x + width, y + height),
            new Point(x, y + height)));
  }

  private static Slab slab(String id, Outline outline, double[]... joints) {
    List<Joint> laid = new ArrayList<>();
    for (double[] j : joints) {
      laid.add(joint("J" + (laid.size() + 1), j, Purpose.SPACING));
    }
    return Slab.of(id, outline).withLaid(laid, List.of());
  }

  private static Joint joint(String id, double[] j, Purpose purpose) {
    return Joint.of(
        id,
        JointKind.CONTRACTION,
        Path.straight(new Point(j[0], j[1]), new Point(j[2], j[3])),
        purpose);
  }

  private static double[] from(double... xy) {
    return xy;
  }

  private static Figures figures(Slab... slabs) {
    return Figures.of(Layouts.of(Plan.EMPTY.withSlabs(List.of(slabs))));
  }

  @Test
  void anEvenCrossCostsItsLength() {
    // 20 ft x 16 ft in four panels of 10 x 8.
    Figures f =
        figures(slab("a", outline(0, 0, 240, 192), from(120, 0, 120, 192), from(0, 96, 240, 96)));
    assertThat(f.feet()).isEqualTo(36);
    assertThat(f.tees() + f.ys() + f.missed() + f.tips()).isZero();
    assertThat(f.cv()).isCloseTo(0, within(1e-12));
    assertThat(f.meanAspect()).isCloseTo(1.25, within(1e-12));
    assertThat(f.panels()).isEqualTo(4);
    assertThat(f.cost()).isCloseTo(36, within(1e-12));
  }

  @Test
  void aTeeCostsEightFeetAndSpreadAQuarterOfTheLengthOverATenth() {
    // Areas 100, 50 and 50 ft2: mean 66.67, deviation 23.57, cv 0.3536.
    Figures f =
        figures(slab("a", outline(0, 0, 240, 120), from(120, 0, 120, 120), from(120, 60, 240, 60)));
    double cv = Math.sqrt((2 * 50 * 50 + 100 * 100) / 3.0 / (200 / 3.0) / (200 / 3.0) - 1);
    assertThat(f.tees()).isEqualTo(1);
    assertThat(f.cv()).isCloseTo(cv, within(1e-12));
    assertThat(f.cost()).isCloseTo(20 + 8 + 0.25 * 20 * (cv - 0.10), within(1e-12));
  }

  @Test
  void aMeetingOfThreeCostsFourFeet() {
    Figures f =
        figures(
            slab(
                "a",
                outline(0, 0, 200, 200),
                from(100, 100, 100, 0),
                from(100, 100, 0, 160),
                from(100, 100, 200, 160)));
    SlabFigures a = f.slab("a").orElseThrow();
    assertThat(a.ys()).isEqualTo(1);
    assertThat(a.tees()).isZero();
    assertThat(a.cost())
        .isCloseTo(a.feet() + 4 + 0.25 * a.feet() * Math.max(0, a.cv() - 0.10), within(1e-9));
  }

  @Test
  void aTipAndItsJointCountNowhere() {
    // A right angle is no corner for a corner joint unless the user marks it: mark it.
    List<Joint> laid =
        List.of(
            joint("J1", from(120, 0, 120, 120), Purpose.SPACING),
            joint("J2", from(18, 0, 0, 18), Purpose.CORNER));
    Slab a = Slab.of("a", outline(0, 0, 240, 120)).withLaid(laid, List.of());
    Figures f = figures(a);
    assertThat(f.feet()).isEqualTo(10);
    assertThat(f.panels()).isEqualTo(2);
    assertThat(f.tips()).isEqualTo(1);
    assertThat(f.slabs().getFirst().ends().onEdges()).isEqualTo(2);
  }

  @Test
  void aJointThatMissesTheNeighboursCostsTwoFeet() {
    Slab a = slab("a", outline(0, 0, 240, 120), from(120, 0, 120, 120));
    Slab b = slab("b", outline(0, 120, 240, 120), from(122, 120, 122, 240));
    Figures f = figures(a, b);
    assertThat(f.slabs()).extracting(SlabFigures::missed).containsExactly(1, 0);
    assertThat(f.cost()).isCloseTo(20 + 2, within(1e-9));
    Slab near = slab("b", outline(0, 120, 240, 120), from(121, 120, 121, 240));
    assertThat(figures(a, near).missed()).isZero();
  }

  @Test
  void theSlabWithFewerJointsIsTheOneThatMisses() {
    Slab a = slab("a", outline(0, 0, 240, 120), from(80, 0, 80, 120), from(160, 0, 160, 120));
    Slab b = slab("b", outline(0, 120, 240, 120), from(120, 120, 120, 240));
    assertThat(figures(a, b).slabs()).extracting(SlabFigures::missed).containsExactly(0, 1);
    Slab bare = slab("b", outline(0, 120, 240, 120));
    assertThat(figures(a, bare).slabs()).extracting(SlabFigures::missed).containsExactly(2, 0);
  }

  @Test
  void fillerBetweenSlabsLetsJointsMiss() {
    Joint filler =
        Joint.of(
            "F",
            JointKind.ISOLATION,
            Path.straight(new Point(0, 120), new Point(240, 120)),
            Purpose.ISOLATION);
    Slab a =
        Slab.of("a", outline(0, 0, 240, 120))
            .withLaid(
                List.of(joint("J1", from(120, 0, 120, 120), Purpose.SPACING), filler), List.of());
    Slab b = slab("b", outline(0, 120, 240, 120), from(150, 120, 150, 240));
    assertThat(figures(a, b).missed()).isZero();
  }

  @Test
  void endsAreCountedWholeAndSquare() {
    // One square joint on whole inches, one that slants 20 degrees and ends off the marks.
    double aside = 120 * Math.tan(Math.toRadians(20));
    Figures f =
        figures(
            slab(
                "a",
                outline(0, 0, 360, 120),
                from(120, 0, 120, 120),
                from(240, 0, 240 + aside, 120)));
    assertThat(f.slabs().getFirst().ends()).isEqualTo(new EndCount(4, 2, 4, 3));
    assertThat(f.squareShare()).isEqualTo(0.5);
    assertThat(f.wholeShare()).isEqualTo(0.75);
  }

  @Test
  void aMetricPlanCountsTenMillimetres() {
    // 2.5 m is a whole mark, 98.425 in is none; 100 in is 2.54 m: whole both ways.
    double metre = LengthUnit.METRE.inches();
    Slab a = slab("a", outline(0, 0, 5.003 * metre, 100), from(2.5 * metre, 0, 2.5 * metre, 100));
    Plan plan = Plan.EMPTY.withSlabs(List.of(a));
    assertThat(Figures.of(Layouts.of(plan)).wholeShare()).isZero();
    Plan metric =
        new Plan(
            LengthUnit.METRE,
            plan.north(),
            plan.job(),
            plan.slabs(),
            plan.fixed(),
            plan.given(),
            plan.pour(),
            plan.kept());
    assertThat(Figures.of(Layouts.of(metric)).wholeShare()).isEqualTo(1);
  }

  @Test
  void anUnjointedPlanHasFiguresToo() {
    Figures f = figures(slab("a", outline(0, 0, 100, 80)));
    assertThat(f.cost()).isZero();
    assertThat(f.meanAspect()).isCloseTo(1.25, within(1e-12));
    assertThat(f.squareShare()).isEqualTo(1);
    assertThat(f.slab("b")).isEqualTo(Optional.empty());
    assertThat(Figures.of(Layouts.of(Plan.EMPTY)).meanAspect()).isEqualTo(1);
  }

  @Test
  void endsAreCountedByWhatTheyEndOn() {
    // One joint from a corner to an arc, one off square, one at a whole inch and one beside it.
    double aslant = 100 * Math.tan(Math.toRadians(20));
    Figures f =
        figures(
            slab(
                "a",
                outline(0, 0, 240, 100),
                from(60, 0, 60, 100),
                from(120.3, 0, 120.3, 100),
                from(160, 0, 160 + aslant, 100),
                from(0, 0, 60, 50)));
    EndCount ends = f.slab("a").orElseThrow().ends();
    assertThat(ends.onEdges()).isEqualTo(6);
    assertThat(ends.square()).isEqualTo(4);
    assertThat(ends.onStraight()).isEqualTo(6);
    assertThat(ends.whole()).isEqualTo(3);
    assertThat(ends.squareShare()).isCloseTo(4 / 6.0, within(1e-12));
    assertThat(ends.wholeShare()).isCloseTo(0.5, within(1e-12));
    assertThat(f.squareShare()).isCloseTo(4 / 6.0, within(1e-12));
  }

  @Test
  void endsOnArcsStandOnNoMark() {
    Outline bowed =
        new Outline(
            List.of(
                Vertex.at(new Point(0, 0)),
                Vertex.at(new Point(200, 0)),
                Vertex.arc(new Point(200, 100), new Point(100, 130)),
                Vertex.at(new Point(0, 100))));
    EndCount ends =
        figures(slab("a", bowed, from(100, 0, 100, 130))).slab("a").orElseThrow().ends();
    assertThat(ends.onEdges()).isEqualTo(2);
    assertThat(ends.onStraight()).isEqualTo(1);
  }

  @Test
  void onlyWhatIsCutCountsInFeet() {
    Joint formed =
        joint("J1", from(120, 0, 120, 120), Purpose.SPACING).withKind(JointKind.CONSTRUCTION);
    Slab slab = Slab.of("a", outline(0, 0, 240, 120)).withLaid(List.of(formed), List.of());
    assertThat(figures(slab).feet()).isZero();
  }

  @Test
  void meetingsAndMissesAreAddedUpOverTheSlabs() {
    Slab star =
        slab(
            "a",
            outline(0, 0, 200, 200),
            from(100, 100, 100, 0),
            from(100, 100, 0, 160),
            from(100, 100, 200, 160));
    Slab beside = slab("b", outline(200, 0, 200, 200), from(200, 100, 400, 100));
    Figures f = figures(star, beside);
    assertThat(f.ys()).isEqualTo(f.slab("a").orElseThrow().ys()).isPositive();
    assertThat(f.missed())
        .isEqualTo(f.slab("a").orElseThrow().missed() + f.slab("b").orElseThrow().missed())
        .isPositive();
  }
}
