package org.jointwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What the user told of the ground, seen at one unit for an inch: y is turned over, no more. */
class UserMarksTest {
  private static final View VIEW = new View(new Point(0, 0), 1, 0);
  private static final Slab SLAB =
      Slab.of("a", Outline.of(List.of(p(0, 0), p(240, 0), p(240, 120), p(0, 120))));

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static List<Mark.Line> drawn(Plan plan) {
    return PlanDrawing.told(plan, VIEW, Pens.SCREEN);
  }

  private static Plan with(Slab slab) {
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  @Test
  void featureIsABarAlongTheInsideOfItsEdge() {
    EdgeSetting door =
        EdgeSetting.OPEN.withFeatures(List.of(Feature.of(FeatureKind.GARAGE_DOOR, 24, 216)));
    List<Mark.Line> lines = drawn(with(SLAB.withEdges(java.util.Map.of(2, door))));

    assertThat(lines).hasSize(2);
    Mark.Line bar = lines.getFirst();
    assertThat(bar.role()).isEqualTo(Role.FEATURE);
    Mark.Line hollow = lines.getLast();
    assertThat(hollow.role()).as("hollow: no joint and no side").isEqualTo(Role.PAPER);
    assertThat(hollow.width()).isLessThan(bar.width() - Pens.SCREEN.thin());
    assertThat(hollow.path().length()).isLessThan(bar.path().length() - Pens.SCREEN.thin());
    // The top edge runs from right to left at y = 120, so at -120 on the paper; inside is below.
    assertThat(bar.path().start().distance(p(216, -120 + Pens.SCREEN.fillerLeast())))
        .isLessThan(1e-9);
    assertThat(bar.path().end().distance(p(24, -120 + Pens.SCREEN.fillerLeast()))).isLessThan(1e-9);
  }

  @Test
  void givenJointIsDrawnBesideTheSlabAndOnlyNearIt() {
    Plan plan =
        with(SLAB).withGiven(List.of(GivenJoint.of(Path.straight(p(100, 60), p(100, -600)))));
    List<Mark.Line> lines = drawn(plan);

    assertThat(lines).hasSize(1);
    Mark.Line line = lines.getFirst();
    double reach = 8 * Pens.SCREEN.hatchEvery();
    assertThat(line.dashes()).isNotEmpty();
    assertThat(line.role()).isEqualTo(Role.GIVEN);
    assertThat(line.path().start().y()).isBetween(-1.0, 2.0);
    assertThat(line.path().end().y()).isBetween(reach - 2, reach + 2);
  }

  @Test
  void zoneIsDrawnOnItsSlabAndOnlyNearIt() {
    Outline strip = Outline.of(List.of(p(50, -500), p(60, -500), p(60, 60), p(50, 60)));
    List<Mark.Line> lines =
        drawn(with(SLAB.withKeepClear(List.of(KeepClear.of("drain line", strip)))));

    assertThat(lines).isNotEmpty().allMatch(l -> l.role() == Role.ZONE && !l.dashes().isEmpty());
    double lowest = 4 * Pens.SCREEN.hatchEvery();
    assertThat(lines)
        .allSatisfy(l -> assertThat(l.path().edges()).allMatch(e -> e.box().maxY() < lowest + 3));
    assertThat(lines).anyMatch(l -> l.path().edges().stream().anyMatch(e -> e.box().minY() == -60));
  }

  @Test
  void planThatTellsNothingHasNoSuchMarks() {
    assertThat(drawn(with(SLAB))).isEmpty();
    assertThat(PlanDrawing.of(Layouts.of(with(SLAB)), VIEW, Pens.SCREEN).marks())
        .filteredOn(m -> m instanceof Mark.Group g && g.name().equals("features"))
        .allMatch(m -> ((Mark.Group) m).marks().isEmpty());
  }
}
