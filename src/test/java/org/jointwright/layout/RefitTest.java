package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.joint.Layout;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What becomes of a pattern when its user changes something. Slabs 4 in thick: joints to 10 ft. */
class RefitTest {
  private static final String ID = "slab";

  private static Point p(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private static Slab slab(Point... corners) {
    return Slab.of(ID, Outline.of(List.of(corners)));
  }

  private static Slab rectangle(double wide, double high) {
    return slab(p(0, 0), p(wide, 0), p(wide, high), p(0, high));
  }

  private static Plan with(Slab slab) {
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  private static List<Joint> cuts(Layout layout) {
    return layout.slabs().getFirst().joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .toList();
  }

  private static List<Path> paths(Layout layout) {
    return cuts(layout).stream().map(Joint::path).toList();
  }

  private static Plan moved(Plan plan, int corner, double x, double y) {
    return new SlabEdit.MoveCorner(Ref.outline(ID, corner), p(x, y)).applyTo(plan);
  }

  @Test
  void linesDivideALongerSlabAsTheyDidTheShorter() {
    Plan plan = with(rectangle(18, 27));
    Layout before = LayoutEngine.lay(plan);
    Plan longer = moved(moved(plan, 2, 18, 28.5), 3, 0, 28.5);

    Layout now = LayoutEngine.refit(before, longer).orElseThrow();

    for (double part : new double[] {1.0 / 3, 2.0 / 3}) {
      assertThat(paths(before)).anyMatch(j -> isSame(j, across(part * 27)));
      assertThat(paths(now)).anyMatch(j -> isSame(j, across(part * 28.5)));
    }
  }

  private static Path across(double y) {
    return Path.straight(p(0, y), p(18, y));
  }

  @Test
  void endsStayAtWholeInches() {
    Plan plan = with(rectangle(18, 27));
    // 27'-5" in three is 9'-1 2/3".
    double high = 27 + 5.0 / 12;
    Plan longer = moved(moved(plan, 2, 18, high), 3, 0, high);

    Layout now = LayoutEngine.refit(LayoutEngine.lay(plan), longer).orElseThrow();

    for (Path path : paths(now)) {
      assertThat(path.start().y()).isCloseTo(Math.rint(path.start().y()), within(1e-6));
      assertThat(path.end().y()).isCloseTo(Math.rint(path.end().y()), within(1e-6));
    }
  }

  @Test
  void lineFromAnInsideCornerStaysSquareWhenAFarEdgeTurns() {
    Plan plan = with(slab(p(0, 0), p(18, 0), p(18, 9), p(9, 9), p(9, 18), p(0, 18)));
    Layout before = LayoutEngine.lay(plan);
    Path line = Path.straight(p(9, 0), p(9, 9));
    assertThat(paths(before)).anyMatch(j -> isSame(j, line));

    Layout now = LayoutEngine.refit(before, moved(plan, 1, 18.5, 0)).orElseThrow();

    assertThat(paths(now)).anyMatch(j -> isSame(j, line));
  }

  private static boolean isSame(Path a, Path b) {
    return a.distance(b.start()) < 0.01 && a.distance(b.end()) < 0.01;
  }

  @Test
  void patternThatWouldBreakARuleIsGivenUp() {
    Plan plan = with(rectangle(20, 20));
    Layout before = LayoutEngine.lay(plan);

    // Within the half inch that is forgiven a panel, and out of it.
    assertThat(LayoutEngine.refit(before, wide(plan, 20 + 0.6 / 12))).isPresent();
    assertThat(LayoutEngine.refit(before, wide(plan, 20 + 1.4 / 12))).isEmpty();
  }

  private static Plan wide(Plan plan, double feet) {
    return moved(moved(plan, 1, feet, 0), 2, feet, 20);
  }

  @Test
  void thickerSlabKeepsItsJointsAndAThinnerOneNeedsOthers() {
    Plan plan = with(rectangle(18, 27));
    Layout before = LayoutEngine.lay(plan);

    Plan thicker = new SlabEdit.SetThickness(ID, Length.inches(5)).applyTo(plan);
    assertThat(paths(LayoutEngine.refit(before, thicker).orElseThrow())).isEqualTo(paths(before));
    Plan thinner = new SlabEdit.SetThickness(ID, Length.inches(3)).applyTo(plan);
    assertThat(LayoutEngine.refit(before, thinner)).isEmpty();
  }

  @Test
  void whoAsksForAnotherKindOfLayoutGetsAnother() {
    Plan plan = with(rectangle(18, 27));
    Plan asked = new SlabEdit.SetPreference(ID, Preference.Overall.SQUAREST).applyTo(plan);
    assertThat(LayoutEngine.refit(LayoutEngine.lay(plan), asked)).isEmpty();
  }

  @Test
  void cornerPutInOnAnEdgeOrTakenOutChangesNoJoint() {
    Plan plan = with(rectangle(18, 27));
    Layout before = LayoutEngine.lay(plan);
    Plan more = new SlabEdit.AddCorner(Ref.outline(ID, 0), Vertex.at(p(5, 0))).applyTo(plan);

    Layout with = LayoutEngine.refit(before, more).orElseThrow();
    assertThat(paths(with)).isEqualTo(paths(before));
    Layout without = LayoutEngine.refit(with, plan).orElseThrow();
    assertThat(without).isEqualTo(before);
  }

  @Test
  void jointDraggedByHandTakesTheOthersWithIt() {
    Plan plan = with(rectangle(18, 27));
    Layout before = LayoutEngine.lay(plan);
    Joint upright =
        cuts(before).stream().filter(j -> isUpright(j.path())).findFirst().orElseThrow();
    Path to = Path.straight(p(9.5, 0), p(9.5, 27));
    Plan dragged = new JointEdit.Move(ID, upright.id(), to).applyTo(before.plan());

    Layout now = LayoutEngine.refit(before, dragged).orElseThrow();

    assertThat(cuts(now)).filteredOn(Joint::locked).extracting(Joint::path).containsExactly(to);
    assertThat(cuts(now)).hasSameSizeAs(cuts(before));
  }

  private static boolean isUpright(Path path) {
    return Math.abs(path.start().x() - path.end().x()) < 0.1;
  }

  @Test
  void jointsOnTheUsersOwnGoWithItsPattern() {
    Joint own =
        Joint.of("mine", JointKind.CONTRACTION, Path.straight(p(9, 0), p(9, 27)), Purpose.SPACING)
            .withLocked(true);
    Plan plan = with(rectangle(18, 27).withLaid(List.of(own), List.of()));
    Layout before = LayoutEngine.lay(plan);

    assertThat(LayoutEngine.refit(before, plan)).contains(before);
    // Without it the user asks for something else.
    assertThat(LayoutEngine.refit(before, with(rectangle(18, 27)))).isEmpty();
  }

  @Test
  void jointsAtAnOpeningMoveWithIt() {
    Slab slab = rectangle(22, 22).withOpenings(List.of(opening(8)));
    Layout before = LayoutEngine.lay(with(slab));
    Layout now =
        LayoutEngine.refit(before, with(slab.withOpenings(List.of(opening(8.25))))).orElseThrow();

    assertThat(cuts(now)).hasSameSizeAs(cuts(before));
    assertThat(endsAt(before, 8)).isPositive().isEqualTo(endsAt(now, 8.25));
  }

  private static Opening opening(double left) {
    Outline ring = Outline.of(List.of(p(left, 8), p(left + 6, 8), p(left + 6, 14), p(left, 14)));
    return new Opening(ring, Map.of(), Kept.NOTHING);
  }

  private static long endsAt(Layout layout, double left) {
    return paths(layout).stream()
        .filter(
            j ->
                opening(left).outline().ring().distance(j.start()) < 0.01
                    || opening(left).outline().ring().distance(j.end()) < 0.01)
        .count();
  }

  @Test
  void lineThatMeetsAGarageDoorGoesWithTheDoor() {
    Layout before = LayoutEngine.lay(with(doored(9.5)));
    Layout now = LayoutEngine.refit(before, with(doored(9.25))).orElseThrow();

    assertThat(meets(before, p(18.5, 18))).isTrue();
    assertThat(meets(now, p(18.75, 18))).isTrue();
  }

  /** A drive with a door that starts so many feet along its back edge, which runs to the left. */
  private static Slab doored(double from) {
    EdgeSetting door =
        EdgeSetting.against(Against.BUILDING)
            .withFeatures(List.of(Feature.of(FeatureKind.GARAGE_DOOR, 12 * from, 12 * (from + 9))));
    return rectangle(28, 18).withEdges(Map.of(2, door));
  }

  private static boolean meets(Layout layout, Point at) {
    return paths(layout).stream()
        .anyMatch(j -> j.start().distance(at) < 0.5 || j.end().distance(at) < 0.5);
  }

  @Test
  void poursStopWhereTheyDidWhileThatKeepsTheirLimit() {
    Plan plan = with(rectangle(18, 54)).withPour(pour(6.2));
    Layout before = LayoutEngine.lay(plan);
    assertThat(stops(before)).hasSize(1);

    Plan longer = moved(moved(plan, 2, 18, 54.5), 3, 0, 54.5);
    assertThat(stops(LayoutEngine.refit(before, longer).orElseThrow())).hasSize(1);
    Plan smaller = plan.withPour(pour(2.1));
    assertThat(stops(LayoutEngine.refit(before, smaller).orElseThrow())).hasSizeGreaterThan(1);
    assertThat(stops(LayoutEngine.refit(before, plan.withPour(Pour.UNLIMITED)).orElseThrow()))
        .isEmpty();
  }

  private static Pour pour(double yards) {
    return new Pour(Optional.of(Volume.cubicYards(yards)), Optional.empty(), Kept.NOTHING);
  }

  private static List<Joint> stops(Layout layout) {
    return layout.slabs().getFirst().joints().stream()
        .filter(j -> j.purpose() == Purpose.POUR)
        .toList();
  }

  @Test
  void restingHandKeepsThePatternForPenniesAndGetsAnotherForMore() {
    Plan plan = with(rectangle(18, 27));
    Layout before = LayoutEngine.lay(plan);
    assertThat(LayoutEngine.relay(before, plan)).isEqualTo(before);
    // At 6 in joints may stand 15 ft apart: three lines where there were five.
    Plan thick = new SlabEdit.SetThickness(ID, Length.inches(6)).applyTo(plan);
    assertThat(LayoutEngine.refit(before, thick)).isPresent();
    assertThat(cuts(LayoutEngine.relay(before, thick))).hasSizeLessThan(cuts(before).size());
  }
}
