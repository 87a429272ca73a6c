package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jointwright.joint.Layout;
import org.jointwright.joint.PanelMeasures;
import org.jointwright.layout.piece.Limits;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;

/** What the user told of a slab, in the joints that are laid. Slabs 4 in thick: joints to 10 ft. */
class UsersWordTest {
  private static Point p(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  /** A rectangle of so many feet from the origin. */
  private static Slab rectangle(double wide, double high) {
    return Slab.of("slab", Outline.of(List.of(p(0, 0), p(wide, 0), p(wide, high), p(0, high))));
  }

  private static Outline box(double left, double low, double right, double high) {
    return Outline.of(List.of(p(left, low), p(right, low), p(right, high), p(left, high)));
  }

  private static Plan with(Slab slab) {
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  private static List<Joint> cuts(Layout layout) {
    return layout.slabs().getFirst().joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .toList();
  }

  private static List<Double> acrossAt(Layout layout, double y) {
    List<Double> found = new ArrayList<>();
    for (Joint j : cuts(layout)) {
      for (Point end : List.of(j.path().start(), j.path().end())) {
        if (Math.abs(end.y() - 12 * y) < 0.1) {
          // To a millionth: what sums of doubles leave over is no place on a form.
          found.add(Math.rint(end.x() / 12 * 1e6) / 1e6);
        }
      }
    }
    found.sort(Comparator.naturalOrder());
    return found;
  }

  private static void assertNoPanelIsTooLong(Layout layout) {
    assertThat(layout.slabs().getFirst().panels())
        .allMatch(panel -> PanelMeasures.of(panel).longSide() <= 120.5);
  }

  private static EdgeSetting door(double from, double to) {
    return EdgeSetting.against(Against.BUILDING)
        .withFeatures(List.of(Feature.of(FeatureKind.GARAGE_DOOR, 12 * from, 12 * to)));
  }

  @Test
  void twoPanelsOfAnOldDriveMeetTheOldJointsOnBothSides() {
    Plan plan =
        with(rectangle(18, 9))
            .withGiven(
                List.of(
                    GivenJoint.of(Path.straight(p(8.5, 0), p(8.5, -14))),
                    GivenJoint.of(Path.straight(p(8.5, 22), p(8.5, 9)))));
    Layout layout = LayoutEngine.lay(plan);

    assertThat(acrossAt(layout, 0)).containsExactly(8.5);
    assertThat(acrossAt(layout, 9)).containsExactly(8.5);
    // Without them the panels would be even.
    assertThat(acrossAt(LayoutEngine.lay(with(rectangle(18, 9))), 0)).containsExactly(9.0);
  }

  @Test
  void oldJointThatStopsAtFillerOrRunsOnOverTheSlabIsMetToo() {
    for (Path old :
        List.of(Path.straight(p(8.5, -0.1), p(8.5, -14)), Path.straight(p(8.5, 20), p(8.5, -14)))) {
      Plan plan = with(rectangle(18, 9)).withGiven(List.of(GivenJoint.of(old)));
      assertThat(acrossAt(LayoutEngine.lay(plan), 0)).containsExactly(8.5);
    }
  }

  @Test
  void oldJointElsewhereChangesNothing() {
    Plan plan =
        with(rectangle(18, 9))
            .withGiven(List.of(GivenJoint.of(Path.straight(p(8.5, -1), p(8.5, -14)))));
    assertThat(LayoutEngine.lay(plan).slabs().getFirst().joints())
        .isEqualTo(LayoutEngine.lay(with(rectangle(18, 9))).slabs().getFirst().joints());
  }

  @Test
  void jointsMeetTheSidesOfAGarageDoorWhereThatCostsLittle() {
    // The back edge runs from right to left: the door stands from x = 19 to x = 10.
    Layout layout = LayoutEngine.lay(with(rectangle(29, 18).withEdges(Map.of(2, door(10, 19)))));

    assertThat(acrossAt(layout, 18)).containsExactly(10.0, 19.0);
    assertNoPanelIsTooLong(layout);
  }

  @Test
  void noPanelIsBrokenForAGarageDoor() {
    // Lines at both sides of this door would leave panels of 12 ft, or cost a third line.
    Layout layout = LayoutEngine.lay(with(rectangle(30, 27).withEdges(Map.of(2, door(9, 18)))));

    assertThat(acrossAt(layout, 27)).containsExactly(10.0, 20.0);
    assertNoPanelIsTooLong(layout);
  }

  @Test
  void noJointRunsInAZoneThatIsKeptClear() {
    Outline zone = box(8.5, 8, 9.5, 10);
    Slab slab = rectangle(18, 18).withKeepClear(List.of(KeepClear.of("cleanout", zone)));
    Layout layout = LayoutEngine.lay(with(slab));

    assertThat(acrossAt(LayoutEngine.lay(with(rectangle(18, 18))), 0)).containsExactly(9.0);
    assertThat(cuts(layout)).isNotEmpty().noneMatch(j -> runsIn(j, zone.ring()));
    assertNoPanelIsTooLong(layout);
  }

  private static boolean runsIn(Joint joint, Ring zone) {
    for (var e : joint.path().edges()) {
      for (int i = 0; i <= 400; i++) {
        Point at = e.at(i / 400.0);
        if (zone.contains(at) && zone.distance(at) > 0.6) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void jointThatIsLockedStaysInAZone() {
    Joint own =
        Joint.of("J1", JointKind.CONTRACTION, Path.straight(p(9, 0), p(9, 18)), Purpose.SPACING)
            .withLocked(true);
    Slab slab =
        rectangle(18, 18)
            .withKeepClear(List.of(KeepClear.of("cleanout", box(8.5, 8, 9.5, 10))))
            .withLaid(List.of(own), List.of());

    assertThat(cuts(LayoutEngine.lay(with(slab))))
        .anyMatch(j -> j.locked() && j.path().equals(own.path()));
  }

  @Test
  void zoneOverTheWholeSlabLeavesItWhole() {
    Slab slab =
        rectangle(18, 18).withKeepClear(List.of(KeepClear.of("pipes", box(-1, -1, 19, 19))));
    assertThat(cuts(LayoutEngine.lay(with(slab)))).isEmpty();
  }

  @Test
  void edgeToBeLinedUpWithLeads() {
    Slab slab =
        Slab.of("slab", Outline.of(List.of(p(0, 0), p(18, 0), p(24, 18), p(6, 18))))
            .withJointing(Jointing.DEFAULT.withPreference(new Preference.LinedUpWith(1)));
    Limits limits = new Limits(120, 1.5, 24);
    Bench bench = Bench.at(slab.outline().ring().box());
    Point lead = Grounds.of(slab, List.of(), limits, bench).axes().getFirst();
    Point along = new Point(6, 18).unit();

    assertThat(Math.min(Math.abs(lead.cross(along)), Math.abs(lead.dot(along)))).isLessThan(1e-9);
    Slab free = slab.withJointing(Jointing.DEFAULT);
    assertThat(Grounds.of(free, List.of(), limits, bench).axes()).hasSize(2);
  }
}
