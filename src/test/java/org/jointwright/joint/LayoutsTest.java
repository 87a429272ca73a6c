package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class LayoutsTest {
  private static final Outline RECTANGLE = rectangle(0, 0, 240, 120);

  @Test
  void noJointLeavesOnePanelOfTheWholeSlab() {
    SlabLayout layout = Layouts.of(slab(RECTANGLE));
    assertThat(layout.panels()).hasSize(1);
    assertThat(layout.panels().getFirst().area()).isCloseTo(28800, within(1e-9));
  }

  @Test
  void twoCrossingJointsCutFourPanelsNumberedFromBelow() {
    SlabLayout layout =
        Layouts.of(slab(RECTANGLE, joint("J1", 100, 0, 100, 120), joint("J2", 0, 60, 240, 60)));
    assertThat(layout.panels())
        .extracting(Panel::area)
        .containsExactly(6000.0, 8400.0, 6000.0, 8400.0);
    assertThat(layout.loose()).isEmpty();
  }

  @Test
  void endShortOfTheEdgeByLessThanTheToleranceReachesIt() {
    SlabLayout layout = Layouts.of(slab(RECTANGLE, joint("J1", 100, 0.4, 100, 119.6)));
    assertThat(layout.panels()).hasSize(2);
  }

  @Test
  void endShortOfTheEdgeByMoreThanTheToleranceCutsNothing() {
    SlabLayout layout = Layouts.of(slab(RECTANGLE, joint("J1", 100, 0.6, 100, 120)));
    assertThat(layout.panels()).hasSize(1);
    assertThat(layout.loose()).extracting(Joint::id).containsExactly("J1");
  }

  @Test
  void tailBeyondTheLastMeetingIsLooseAndTheRestStillCuts() {
    SlabLayout layout =
        Layouts.of(slab(RECTANGLE, joint("J1", 100, 0, 100, 120), joint("J2", 0, 60, 130, 60)));
    assertThat(layout.panels()).hasSize(3);
    assertThat(layout.loose()).extracting(Joint::id).containsExactly("J2");
  }

  @Test
  void openingThatNoJointReachesIsAHole() {
    Slab slab = withOpening(slab(RECTANGLE), rectangle(100, 40, 140, 80));
    List<Panel> panels = Layouts.of(slab).panels();
    assertThat(panels).hasSize(1);
    assertThat(panels.getFirst().holes()).hasSize(1);
    assertThat(panels.getFirst().area()).isCloseTo(28800 - 1600, within(1e-9));
  }

  @Test
  void oneJointToAnOpeningLeavesItAHole() {
    Slab slab =
        withOpening(slab(RECTANGLE, joint("J1", 120, 0, 120, 40)), rectangle(100, 40, 140, 80));
    SlabLayout layout = Layouts.of(slab);
    assertThat(layout.panels()).hasSize(1);
    assertThat(layout.panels().getFirst().holes()).hasSize(1);
    assertThat(layout.loose()).hasSize(1);
  }

  @Test
  void twoJointsToAnOpeningEndTheHole() {
    Slab slab =
        withOpening(
            slab(RECTANGLE, joint("J1", 120, 0, 120, 40), joint("J2", 120, 80, 120, 120)),
            rectangle(100, 40, 140, 80));
    List<Panel> panels = Layouts.of(slab).panels();
    assertThat(panels).hasSize(2);
    assertThat(panels).allMatch(p -> p.holes().isEmpty());
    assertThat(panels.getFirst().area()).isCloseTo(13600, within(1e-9));
  }

  @Test
  void boxOutIsNoPanel() {
    Slab slab =
        slab(
            RECTANGLE,
            joint("J1", 120, 0, 120, 48),
            joint("J2", 120, 72, 120, 120),
            new Joint(
                "J3",
                JointKind.ISOLATION,
                Path.through(List.of(p(108, 60), p(120, 48), p(132, 60), p(120, 72), p(108, 60))),
                false,
                Purpose.ISOLATION,
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                Kept.NOTHING));
    Outline turned = Outline.of(List.of(p(108, 60), p(120, 48), p(132, 60), p(120, 72)));
    slab = slab.withLaid(slab.joints(), List.of(new BoxOut("post", turned, Kept.NOTHING)));
    List<Panel> panels = Layouts.of(slab).panels();
    assertThat(panels).hasSize(2);
    assertThat(panels).allMatch(p -> Math.abs(p.area() - (14400 - 144)) < 1e-9);
    assertThat(panels.getFirst().outer()).anyMatch(s -> s.source() instanceof Source.OnBoxOut);
  }

  @Test
  void discCutByTwoDiametersKeepsItsArcs() {
    Outline disc =
        new Outline(List.of(Vertex.arc(p(100, 0), p(0, 100)), Vertex.arc(p(-100, 0), p(0, -100))));
    List<Panel> panels =
        Layouts.of(slab(disc, joint("J1", -100, 0, 100, 0), joint("J2", 0, -100, 0, 100))).panels();
    assertThat(panels).hasSize(4);
    assertThat(panels).allMatch(p -> Math.abs(p.area() - Math.PI * 2500) < 1e-6);
    assertThat(panels).allMatch(p -> p.outer().stream().anyMatch(s -> s.edge() instanceof Arc));
  }

  @Test
  void isolationAlongAnEdgeCutsNoSliver() {
    Slab slab =
        slab(
            RECTANGLE,
            Joint.of(
                "J1",
                JointKind.ISOLATION,
                Path.straight(p(240, 0), p(240, 120)),
                Purpose.ISOLATION),
            joint("J2", 100, 0, 100, 120));
    SlabLayout layout = Layouts.of(slab);
    assertThat(layout.panels()).hasSize(2);
    assertThat(layout.loose()).isEmpty();
  }

  @Test
  void everyJointEndIsANodeOfThePanelItTouches() {
    SlabLayout layout =
        Layouts.of(slab(RECTANGLE, joint("J1", 0, 60, 240, 60), joint("J2", 100, 60, 100, 120)));
    Panel below = layout.panels().getFirst();
    assertThat(below.ring().vertices()).contains(p(100, 60));
    assertThat(below.outer()).hasSize(5);
  }

  @Test
  void aLayoutIsFoundByTheNameOfItsSlab() {
    Slab near = slab(RECTANGLE).withId("near");
    Slab far = slab(rectangle(300, 0, 400, 120)).withId("far");
    Layout layout = Layouts.of(Plan.EMPTY.withSlabs(List.of(near, far)));
    assertThat(layout.slab("far").orElseThrow().slab()).isEqualTo(far);
    assertThat(layout.slab("yard")).isEmpty();
  }

  @Test
  void oneSlabChangedLeavesTheOthersAsTheyAre() {
    Slab near = slab(RECTANGLE).withId("near");
    Slab far = slab(rectangle(300, 0, 400, 120)).withId("far");
    Layout before = Layouts.of(Plan.EMPTY.withSlabs(List.of(near, far)));
    Slab cut = far.withLaid(List.of(joint("J1", 350, 0, 350, 120)), List.of());
    Layout after = Layouts.with(before, cut);
    assertThat(after).isEqualTo(Layouts.of(Plan.EMPTY.withSlabs(List.of(near, cut))));
    assertThat(after.slabs().getFirst()).isSameAs(before.slabs().getFirst());
    assertThat(Layouts.of(after.plan(), cut)).isEqualTo(after.slabs().getLast());
  }

  @Test
  void theLayoutHoldsItsSlabsBoxOuts() {
    BoxOut boxOut = new BoxOut("post", rectangle(100, 40, 140, 80), Kept.NOTHING);
    assertThat(Layouts.of(slab(RECTANGLE).withLaid(List.of(), List.of(boxOut))).boxOuts())
        .containsExactly(boxOut);
  }

  @Test
  void anOpeningInAPanelAmidAnotherIsAHoleOfTheInnerOne() {
    // The panel round it comes first in one and last in the other: it is listed from below.
    for (double up : new double[] {0, 20}) {
      Joint island =
          Joint.of(
              "J1",
              JointKind.CONTRACTION,
              Path.through(
                  List.of(
                      p(80, 10 + up),
                      p(160, 10 + up),
                      p(160, 90 + up),
                      p(80, 90 + up),
                      p(80, 10 + up))),
              Purpose.SPACING);
      Slab slab = withOpening(slab(RECTANGLE, island), rectangle(110, 55 + up, 130, 75 + up));
      assertThat(Layouts.of(slab).panels())
          .extracting(Panel::area)
          .containsExactlyInAnyOrder(28800.0 - 6400, 6400.0 - 400);
      assertThat(Layouts.of(slab).panels())
          .filteredOn(p -> p.area() == 6000)
          .singleElement()
          .satisfies(p -> assertThat(p.holes()).hasSize(1));
    }
  }

  @Test
  void aSlabAsFlatAsABowIsAPanel() {
    Outline bow = new Outline(List.of(Vertex.at(p(0, 0)), Vertex.arc(p(240, 0), p(120, 6))));
    assertThat(Layouts.of(slab(bow)).panels()).hasSize(1);
  }

  @Test
  void panelsWhoseMiddlesAreLevelWithinAnInchCountFromTheLeft() {
    double base = 0.25;
    Outline stepped =
        Outline.of(
            List.of(
                p(0, base),
                p(200, base),
                p(200, base + 119.8),
                p(100, base + 119.8),
                p(100, base + 120.4),
                p(0, base + 120.4)));
    List<Panel> panels =
        Layouts.of(slab(stepped, joint("J1", 100, base, 100, base + 119.8))).panels();
    assertThat(panels).hasSize(2);
    assertThat(panels.getFirst().ring().box().minX()).isZero();
  }

  @Test
  void linesAndArcsThatLeaveOnePlaceKeepTheirOrder() {
    Outline disc =
        new Outline(List.of(Vertex.arc(p(100, 0), p(0, 100)), Vertex.arc(p(-100, 0), p(0, -100))));
    List<Panel> panels =
        Layouts.of(
                slab(
                    disc,
                    joint("J1", 100, 0, -100, 0),
                    joint("J2", 100, 0, 0, 100),
                    joint("J3", 100, 0, 0, -100)))
            .panels();
    double segment = Math.PI * 2500 - 5000;
    double rest = Math.PI * 5000 - segment;
    assertThat(panels).hasSize(4);
    assertThat(panels.stream().mapToDouble(Panel::area).sorted().toArray())
        .containsExactly(new double[] {segment, segment, rest, rest}, within(1e-6));
  }

  private static Slab slab(Outline outline, Joint... joints) {
    return Slab.of("slab", outline).withLaid(List.of(joints), List.of());
  }

  private static Slab withOpening(Slab slab, Outline opening) {
    return slab.withOpenings(List.of(new Opening(opening, Map.of(), Kept.NOTHING)));
  }

  private static Outline rectangle(double x0, double y0, double x1, double y1) {
    return Outline.of(List.of(p(x0, y0), p(x1, y0), p(x1, y1), p(x0, y1)));
  }

  private static Joint joint(String id, double x0, double y0, double x1, double y1) {
    return Joint.of(
        id, JointKind.CONTRACTION, Path.straight(p(x0, y0), p(x1, y1)), Purpose.SPACING);
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
