package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.Sketch;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Pour;
import org.junit.jupiter.api.Test;

class PlacementsTest {
  /** Three bays of 80 by 120, the last formed off. */
  private static final Sketch BAYS =
      Sketch.rectangle(240, 120)
          .joint(80, 0, 80, 120)
          .joint(JointKind.CONSTRUCTION, 160, 0, 160, 120);

  @Test
  void concreteGoesOnOverASawnJointAndStopsAtAFormedOne() {
    List<Placement> pours = Placements.of(layout(BAYS));
    assertThat(pours).extracting(p -> p.panels().size()).containsExactly(2, 1);
    assertThat(pours).extracting(Placement::area).containsExactly(19200.0, 9600.0);
    assertThat(pours.getFirst().volume().cubicInches()).isCloseTo(4 * 19200, within(1e-6));
    assertThat(pours).extracting(p -> Math.round(p.width())).containsExactly(120L, 80L);
  }

  @Test
  void fillerEndsAPourToo() {
    assertThat(Placements.of(layout(Sketch.rectangle(240, 120).filler(120, 0, 120, 120))))
        .hasSize(2);
  }

  @Test
  void aJointThatWouldBeFormedEndsAPour() {
    SlabLayout layout = layout(BAYS);
    assertThat(Placements.of(layout, Set.of("J1"))).hasSize(3);
    Placements placements = Placements.in(layout);
    assertThat(placements.split(Set.of("J1"))).hasSize(3);
    assertThat(placements.split(Set.of())).isEqualTo(Placements.of(layout));
  }

  @Test
  void withoutAFormedJointWhatItPartsIsOnePour() {
    Sketch bays =
        Sketch.rectangle(320, 120)
            .joint(JointKind.CONSTRUCTION, 240, 0, 240, 120)
            .joint(JointKind.CONSTRUCTION, 80, 0, 80, 120)
            .joint(160, 0, 160, 120);
    Placements placements = Placements.in(layout(bays));
    assertThat(placements.without("J1").orElseThrow().area()).isCloseTo(240 * 120, within(1e-6));
    assertThat(placements.without("J1").orElseThrow().panels())
        .extracting(Panel::id)
        .containsExactly("P2", "P3", "P4");
    assertThat(placements.without("J2").orElseThrow().panels())
        .extracting(Panel::id)
        .containsExactly("P1", "P2", "P3");
  }

  @Test
  void aJointThatPartsNoPanelsLeavesNothingToBeOne() {
    Sketch along = Sketch.rectangle(240, 120).joint(80, 0, 80, 120).filler(240, 0, 240, 120);
    assertThat(Placements.in(layout(along)).without("J2")).isEmpty();
  }

  @Test
  void theJointsWithinAPourAreThoseBetweenTwoOfItsPanels() {
    Placements placements = Placements.in(layout(BAYS));
    List<Placement> pours = placements.split(Set.of());
    assertThat(placements.within(pours.getFirst())).containsExactly("J1");
    assertThat(placements.within(pours.getLast())).isEmpty();
    assertThat(placements.within(placements.without("J2").orElseThrow()))
        .containsExactly("J1", "J2");
  }

  @Test
  void aPanelInTheMiddleOfAnotherIsPouredWithIt() {
    Sketch island = Sketch.rectangle(240, 120).joint(100, 40, 140, 40, 140, 80, 100, 80, 100, 40);
    assertThat(Placements.of(layout(island)))
        .extracting(Placement::area)
        .containsExactly(240.0 * 120);
  }

  @Test
  void aPourMayHoldWhatIsAllowedAndNoMore() {
    Pour most = limits(Optional.of(new Volume(1000)), Optional.empty());
    assertThat(holding(1000).isTooMuch(most)).isFalse();
    assertThat(holding(1000.0005).isTooMuch(most)).isFalse();
    assertThat(holding(1000.01).isTooMuch(most)).isTrue();
    assertThat(holding(1000.01).isTooMuch(Pour.UNLIMITED)).isFalse();
  }

  @Test
  void aPourMayBeAsWideAsTheBoardReachesWithinTheTolerance() {
    Pour strip = limits(Optional.empty(), Optional.of(Length.inches(120)));
    assertThat(wide(120.5).isTooWide(strip)).isFalse();
    assertThat(wide(120.6).isTooWide(strip)).isTrue();
    assertThat(wide(120.6).isTooWide(Pour.UNLIMITED)).isFalse();
  }

  @Test
  void bothLimitsCount() {
    Pour both = limits(Optional.of(new Volume(1000)), Optional.of(Length.inches(120)));
    assertThat(pour(900, 100).isWithin(both)).isTrue();
    assertThat(pour(1100, 100).isWithin(both)).isFalse();
    assertThat(pour(900, 130).isWithin(both)).isFalse();
    assertThat(pour(1100, 130).isWithin(both)).isFalse();
  }

  @Test
  void theNearerLimitSaysHowMuchItIs() {
    Pour both = limits(Optional.of(new Volume(1000)), Optional.of(Length.inches(120)));
    assertThat(pour(500, 30).load(both)).isCloseTo(0.5, within(1e-12));
    assertThat(pour(500, 90).load(both)).isCloseTo(0.75, within(1e-12));
    assertThat(pour(500, 90).load(Pour.UNLIMITED)).isZero();
  }

  private static Placement holding(double cubicInches) {
    return pour(cubicInches, 100);
  }

  private static Placement wide(double width) {
    return pour(100, width);
  }

  private static Placement pour(double cubicInches, double width) {
    return new Placement(
        layout(Sketch.rectangle(60, 60)).panels(), 3600, new Volume(cubicInches), width);
  }

  private static Pour limits(Optional<Volume> most, Optional<Length> strip) {
    return new Pour(most, strip, Kept.NOTHING);
  }

  private static SlabLayout layout(Sketch sketch) {
    return Layouts.of(sketch.plan()).slabs().getFirst();
  }
}
