package org.jointwright.wild;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A few of the wild slabs of {@link RandomRun}, and those that once went wrong. */
class WildSlabsTest {
  private static final Path KEPT = Path.of("src/test/resources/cases/wild");

  /** The kinds take turns: so many rounds of them. */
  private static final int ROUNDS = 8;

  private static final int HELD_ROUNDS = 3;

  @ParameterizedTest
  @EnumSource(WildKind.class)
  void wildSlabsAreCutAndJudgedAsGeometryHasIt(WildKind kind) {
    Tally tally = new Tally();
    for (int round = 0; round < ROUNDS; round++) {
      WildSlab slab = new WildSlab(kind, 1_000_000L + round);
      assertThat(new Probe(tally).given(slab.jointed())).as(slab.name()).isEmpty();
    }
    // Whatever is refused, something must be left to judge: only scribbles mostly cross themselves.
    assertThat(tally.refusals()).isLessThan(kind == WildKind.SCRIBBLE ? ROUNDS + 1 : ROUNDS);
  }

  @Test
  void whatHoldsWildSlabsIsJudgedAsGeometryHasIt() {
    Tally tally = new Tally();
    for (WildKind kind : EnumSet.complementOf(EnumSet.of(WildKind.HUGE))) {
      for (int round = 0; round < HELD_ROUNDS; round++) {
        WildSlab slab = new WildSlab(kind, 2_000_000L + round);
        assertThat(new Probe(tally).held(slab.held())).as(slab.name()).isEmpty();
      }
    }
    saysBoth(tally, "M6", "M7");
  }

  @Test
  void theSecondOpinionHasSeenEachRuleBrokenAndKept() {
    Tally tally = new Tally();
    for (WildKind kind : EnumSet.complementOf(EnumSet.of(WildKind.HUGE))) {
      assertThat(new Probe(tally).given(new WildSlab(kind, 3_000_000L).jointed())).isEmpty();
    }
    // That a panel is too narrow (M5) the second opinion never says for sure.
    saysBoth(tally, "M1", "M2", "M3", "M4", "M8");
  }

  private static void saysBoth(Tally tally, String... rules) {
    for (String rule : rules) {
      assertThat(tally.count(rule, Verdict.BROKEN)).as(rule).isGreaterThan(2);
      assertThat(tally.count(rule, Verdict.KEPT)).as(rule).isGreaterThan(20);
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = WildKind.class,
      names = {"TINY", "LENS"})
  void whatTheEngineLaysOnThemTilesThemToo(WildKind kind) {
    WildSlab slab = new WildSlab(kind, 1_000_000L);
    assertThat(new Probe(new Tally()).laid(slab.bare())).as(slab.name()).isEmpty();
  }

  static List<Path> kept() throws IOException {
    try (Stream<Path> files = Files.list(KEPT)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("kept")
  void whatOnceWentWrongGoesWell(Path file) {
    assertThat(PlanReader.read(file))
        .isInstanceOfSatisfying(
            PlanReading.ReadPlan.class,
            read -> {
              Probe probe = new Probe(new Tally());
              boolean held = file.getFileName().toString().startsWith("held");
              assertThat(held ? probe.held(read.plan()) : probe.given(read.plan())).isEmpty();
            });
  }

  @Test
  void panelsThatLeaveAHoleAreFound() {
    SlabLayout whole = cutInTwo();
    SlabLayout half = new SlabLayout(whole.slab(), whole.panels().subList(0, 1), whole.loose());
    assertThat(Tiling.faults(whole)).isEmpty();
    assertThat(Tiling.faults(half)).isNotEmpty();
  }

  @Test
  void panelsOverEachOtherAreFound() {
    SlabLayout whole = cutInTwo();
    SlabLayout twice =
        new SlabLayout(
            whole.slab(),
            List.of(whole.panels().getFirst(), whole.panels().getFirst()),
            whole.loose());
    assertThat(Tiling.faults(twice)).anyMatch(f -> f.startsWith("no coverage"));
  }

  @Test
  void anOutlineThatCrossesItselfIsFound() {
    List<Point> bow =
        List.of(new Point(0, 0), new Point(100, 100), new Point(100, 0), new Point(0, 100));
    assertThat(SecondReading.of(Slab.of("slab", Outline.of(bow)))).isEqualTo(Verdict.BROKEN);
  }

  /** A slab of 10 by 20 ft with a joint across its middle. */
  private static SlabLayout cutInTwo() {
    List<Point> corners =
        List.of(new Point(0, 0), new Point(240, 0), new Point(240, 120), new Point(0, 120));
    Slab slab = Slab.of("slab", Outline.of(corners));
    Layout layout =
        Layouts.of(
            Plan.EMPTY.withSlabs(
                List.of(
                    slab.withLaid(
                        List.of(
                            org.jointwright.plan.Joint.of(
                                "J1",
                                org.jointwright.plan.JointKind.CONTRACTION,
                                org.jointwright.shape.Path.straight(
                                    new Point(120, 0), new Point(120, 120)),
                                org.jointwright.plan.Purpose.SPACING)),
                        List.of()))));
    return layout.slabs().getFirst();
  }
}
