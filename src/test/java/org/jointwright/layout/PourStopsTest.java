package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Placement;
import org.jointwright.joint.Placements;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Where pours stop. Slabs 4 in thick, so 81 square feet to the cubic yard. No source. */
class PourStopsTest {
  private static Point p(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private static Slab rectangle(double wide, double high) {
    return Slab.of("slab", box(0, 0, wide, high));
  }

  private static Outline box(double left, double low, double right, double high) {
    return Outline.of(List.of(p(left, low), p(right, low), p(right, high), p(left, high)));
  }

  private static Pour most(double yards) {
    return new Pour(Optional.of(Volume.cubicYards(yards)), Optional.empty(), Kept.NOTHING);
  }

  private static Pour strip(double feet) {
    return new Pour(Optional.empty(), Optional.of(Length.feet(feet)), Kept.NOTHING);
  }

  private static SlabLayout laid(Slab slab, Pour pour) {
    Layout layout = LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(slab)).withPour(pour));
    return layout.slabs().getFirst();
  }

  private static List<Joint> stops(SlabLayout layout) {
    return layout.joints().stream().filter(j -> j.kind() == JointKind.CONSTRUCTION).toList();
  }

  private static double feet(SlabLayout layout) {
    return stops(layout).stream().mapToDouble(j -> j.path().length()).sum() / 12;
  }

  private static void assertWithin(SlabLayout layout, Pour pour) {
    assertThat(Placements.of(layout)).allMatch(x -> x.isWithin(pour));
  }

  @Test
  void withoutALimitNothingStops() {
    assertThat(stops(laid(rectangle(18, 54), Pour.UNLIMITED))).isEmpty();
  }

  @Test
  void pourJustWithinTheLimitIsNotCutAndOneJustOverIs() {
    // 18 x 54 ft is 972 square feet: 12 cubic yards.
    assertThat(stops(laid(rectangle(18, 54), most(12)))).isEmpty();
    SlabLayout over = laid(rectangle(18, 54), most(11.99));
    assertThat(feet(over)).isEqualTo(18);
    assertThat(stops(over)).allMatch(j -> j.purpose() == Purpose.POUR && !j.locked());
    assertWithin(over, most(11.99));
  }

  @Test
  void fewestFeetComeFirstAndThenEvenPours() {
    // Six rows of 9 ft: the stop runs across the drive after three, never along it.
    SlabLayout layout = laid(rectangle(18, 54), most(7));
    assertThat(feet(layout)).isEqualTo(18);
    assertThat(Placements.of(layout)).hasSize(2);
    assertThat(Placements.of(layout).getFirst().volume()).isEqualTo(Volume.cubicYards(6));
    assertWithin(layout, most(7));
  }

  @Test
  void limitsInMetricVolumesCount() {
    Pour pour =
        new Pour(Optional.of(Volume.of(5, VolumeUnit.CUBIC_METRE)), Optional.empty(), Kept.NOTHING);
    // 12 cubic yards are 9.17 cubic metres.
    SlabLayout layout = laid(rectangle(18, 54), pour);
    assertThat(Placements.of(layout)).hasSize(2);
    assertWithin(layout, pour);
  }

  @Test
  void stripsAreAsWideAsTheBoardReaches() {
    SlabLayout layout = laid(rectangle(36, 54), strip(18));
    assertThat(Placements.of(layout)).hasSize(2).allMatch(x -> x.width() <= 18 * 12 + 0.5);
    assertThat(feet(layout)).isEqualTo(54);
  }

  @Test
  void bothLimitsHoldTogether() {
    Pour both =
        new Pour(Optional.of(Volume.cubicYards(7)), Optional.of(Length.feet(18)), Kept.NOTHING);
    SlabLayout layout = laid(rectangle(36, 54), both);
    assertWithin(layout, both);
    assertThat(Placements.of(layout)).hasSize(4);
    assertThat(feet(layout)).isEqualTo(54 + 36);
  }

  @Test
  void whereNoLineDoesItTheNearestIsTakenAndNoMore() {
    // Panels are 9 ft wide, the board 8 ft: strips of one row come nearest, and more stops are
    // vain.
    SlabLayout layout = laid(rectangle(18, 54), strip(8));
    assertThat(Placements.of(layout)).hasSize(2).allMatch(x -> x.width() > 8 * 12 + 0.5);
    assertThat(feet(layout)).isEqualTo(54);
  }

  @Test
  void slabOfOnePanelCannotBeStopped() {
    SlabLayout layout = laid(rectangle(9, 9), most(0.5));
    assertThat(layout.joints()).isEmpty();
    assertThat(Placements.of(layout)).hasSize(1).noneMatch(x -> x.isWithin(most(0.5)));
  }

  @Test
  void constructionJointOfTheUserCounts() {
    Joint own =
        Joint.of("J1", JointKind.CONSTRUCTION, Path.straight(p(0, 27), p(18, 27)), Purpose.POUR)
            .withLocked(true);
    SlabLayout layout = laid(rectangle(18, 54).withLaid(List.of(own), List.of()), most(6));
    assertThat(stops(layout)).extracting(Joint::locked).containsExactly(true);
    assertThat(Placements.of(layout)).hasSize(2);
  }

  @Test
  void lockedContractionJointIsNotTurnedIntoAStop() {
    Joint own =
        Joint.of("J1", JointKind.CONTRACTION, Path.straight(p(0, 27), p(18, 27)), Purpose.SPACING)
            .withLocked(true);
    SlabLayout layout = laid(rectangle(18, 54).withLaid(List.of(own), List.of()), most(7));
    assertThat(stops(layout)).isNotEmpty().noneMatch(Joint::locked);
    assertThat(layout.joints())
        .filteredOn(j -> j.path().equals(own.path()))
        .allMatch(j -> j.kind() == JointKind.CONTRACTION);
  }

  @Test
  void stopRunsOverAnOpeningInItsWay() {
    Opening opening = new Opening(box(15, 20, 21, 26), java.util.Map.of(), Kept.NOTHING);
    SlabLayout layout = laid(rectangle(36, 46).withOpenings(List.of(opening)), strip(25));
    assertThat(Placements.of(layout).size()).isGreaterThan(1);
    assertWithin(layout, strip(25));
  }

  @Test
  void jointsAreNumberedAnewInCuttingOrder() {
    SlabLayout layout = laid(rectangle(18, 54), most(7));
    List<Joint> joints = layout.joints();
    for (int i = 0; i < joints.size(); i++) {
      assertThat(joints.get(i).id()).isEqualTo("J" + (i + 1));
    }
    assertThat(joints.getLast().kind()).isEqualTo(JointKind.CONSTRUCTION);
  }

  @Test
  void aPourHoldsAllPanelsThatOnlyContractionJointsPart() {
    SlabLayout layout = laid(rectangle(18, 54), most(7));
    int panels = Placements.of(layout).stream().mapToInt(x -> x.panels().size()).sum();
    double area = Placements.of(layout).stream().mapToDouble(Placement::area).sum();
    assertThat(panels).isEqualTo(layout.panels().size());
    assertThat(area).isCloseTo(18 * 54 * 144, org.assertj.core.data.Offset.offset(1e-6));
  }
}
