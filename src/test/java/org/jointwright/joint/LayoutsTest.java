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
