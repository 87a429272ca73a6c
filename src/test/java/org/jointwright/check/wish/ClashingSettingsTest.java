package org.jointwright.check.wish;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.Subject;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Spacing;
import org.junit.jupiter.api.Test;

/** C1, by argument: what no layout can mend. */
class ClashingSettingsTest {
  private static Sketch settings(double spacing, double narrowest) {
    return Sketch.rectangle(200, 200).spacing(spacing).minPanel(narrowest);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void theUsualSettingsDoNotClash() {
    assertThat(Sketch.rectangle(200, 200).findings("C1")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void jointsCloserThanTheNarrowestPanelClash() {
    assertThat(settings(36, 48).findings("C1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.c1.spacing");
              assertThat(f.severity()).isEqualTo(Severity.NOTE);
              assertThat(f.subject()).isEqualTo(new Subject.OnSlab());
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void withinTheTolerancesOfBothRulesASquareMeetsBoth() {
    assertThat(settings(47, 48).findings("C1")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void beyondThemNoneDoes() {
    assertThat(settings(46.9, 48).findings("C1")).hasSize(1);
  }

  @Test
  void aSlabNarrowerThanTheNarrowestPanelIsLetOff() {
    Sketch strip = Sketch.rectangle(40, 400).spacing(36).minPanel(48);
    assertThat(strip.findings("C1")).isEmpty();
  }

  @Test
  void aLockedJointThatMakesASharpPointOrANarrowStripIsNamed() {
    assertThat(Sketch.rectangle(200, 200).joint(0, 60, 104, 0).locked().findings("C1"))
        .extracting(Finding::key)
        .containsExactly("check.c1.lockedSharp");
    assertThat(Sketch.rectangle(100, 100).joint(12, 0, 12, 100).locked().findings("C1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.c1.lockedNarrow");
              assertThat(f.joint()).contains("J1");
            });
  }

  @Test
  void aLockedJointThatRunsAlongTheEdgeIsNamed() {
    assertThat(Sketch.rectangle(100, 100).joint(0, 0, 100, 0).locked().findings("C1"))
        .extracting(Finding::key)
        .contains("check.c1.lockedRun");
  }

  @Test
  void whatIsNotLockedCanBeMended() {
    assertThat(Sketch.rectangle(100, 100).joint(12, 0, 12, 100).findings("C1")).isEmpty();
  }

  @Test
  void aLockedJointInOrderIsNoClash() {
    assertThat(Sketch.rectangle(200, 100).joint(100, 0, 100, 100).locked().findings("C1"))
        .isEmpty();
  }

  /** A zone right across a slab, 36 in wide, where joints may stand 10 ft apart. */
  private static Sketch across(double width) {
    return Sketch.rectangle(width, 300)
        .spacing(120)
        .keepClear("gas line", -10, 130, width + 10, 130, width + 10, 166, -10, 166);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aZoneAcrossASlabThatNeedsNoJointThereDoesNotClash() {
    assertThat(across(100).findings("C1")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aZoneThatRunsFartherThanJointsMayStandApartIsNamed() {
    assertThat(across(144).findings("C1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.c1.zone");
              assertThat(f.severity()).isEqualTo(Severity.NOTE);
              assertThat(f.arguments().getFirst()).isEqualTo("gas line");
              assertThat(f.measured()).isEqualTo(144);
              assertThat(f.limit()).isEqualTo(120);
            });
  }

  @Test
  void aZoneClashesWithTheUsersSpacingOrWithTheTablesBothNamed() {
    Sketch byTable =
        Sketch.rectangle(144, 300).keepClear("gas line", -10, 130, 154, 130, 154, 166, -10, 166);
    assertThat(byTable.findings("C1").getFirst().sources())
        .containsExactly(Cited.plan(), Spacing.times(Spacing.DEFAULT).source());
    assertThat(across(144).findings("C1").getFirst().sources()).containsExactly(Cited.plan());
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aPanelAsLongAsTheToleranceLetsItBeHoldsTheZone() {
    assertThat(across(120.4).findings("C1")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void beyondThatNoPanelHoldsIt() {
    // 121 in across: 121 cos 30 + 36 sin 30 is more than 121, so no turned panel is shorter.
    assertThat(across(121).findings("C1")).hasSize(1);
  }

  @Test
  void aPanelTurnedAgainstASlimZoneMayBeShorterThanIt() {
    // 130 cos 30 + 2 sin 30 is 113.6 in: no argument shows that 120 will not do.
    Sketch slim =
        Sketch.rectangle(130, 300)
            .spacing(120)
            .keepClear("wire", -10, 149, 140, 149, 140, 151, -10, 151);
    assertThat(slim.findings("C1")).isEmpty();
  }

  @Test
  void aWideZoneAmidTheSlabIsNamedToo() {
    Sketch pool =
        Sketch.rectangle(400, 400)
            .spacing(120)
            .keepClear("", 120, 120, 264, 120, 264, 264, 120, 264);
    assertThat(pool.findings("C1"))
        .extracting(Finding::key)
        .containsExactly("check.c1.zoneUnnamed");
  }

  @Test
  void whereALockedJointCrossesTheZoneItIsNoClash() {
    assertThat(across(144).joint(72, 0, 72, 300).locked().findings("C1")).isEmpty();
  }

  /** A post of 8 in amid a slab, and a square zone that reaches so far beyond it. */
  private static Sketch hemmed(double beyond, double x) {
    double half = 4 + beyond;
    return Sketch.rectangle(400, 400)
        .spacing(300)
        .post(x, 200, 8)
        .keepClear(
            "pipes",
            x - half,
            200 - half,
            x + half,
            200 - half,
            x + half,
            200 + half,
            x - half,
            200 + half);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aZoneThatABoxOutMayReachBeyondDoesNotClash() {
    assertThat(hemmed(30, 200).findings("C1")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aZoneFartherRoundAnObjectThanItsBoxOutMayReachIsNamed() {
    assertThat(hemmed(48, 200).findings("C1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.c1.object");
              assertThat(f.severity()).isEqualTo(Severity.NOTE);
              assertThat(f.subject()).isEqualTo(new Subject.OnFixedObject("post"));
              assertThat(f.arguments()).startsWith("post", "pipes");
              assertThat(f.measured()).isEqualTo(48);
              // This program’s own figure: 3 ft.
              assertThat(f.limit()).isEqualTo(36);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void withinTheTolerancesOfBoxOutAndZoneAJointMayLeave() {
    assertThat(hemmed(36.9, 200).findings("C1")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void beyondThemNoJointLeavesTheBoxOut() {
    assertThat(hemmed(37.1, 200).findings("C1")).hasSize(1);
  }

  @Test
  void anObjectWhoseBoxOutMayReachTheEdgeNeedsNoJointFromIt() {
    assertThat(hemmed(48, 38).findings("C1")).isEmpty();
    assertThat(hemmed(48, 42).findings("C1")).hasSize(1);
  }

  @Test
  void whereALockedJointOnlyTouchesTheZoneItClashesAsBefore() {
    assertThat(across(144).joint(0, 60, 144, 60).locked().findings("C1"))
        .extracting(Finding::key)
        .containsExactly("check.c1.zone");
    assertThat(across(144).joint(72, 0, 72, 130.4).locked().findings("C1"))
        .extracting(Finding::key)
        .contains("check.c1.zone");
    assertThat(across(144).joint(72, 0, 72, 130.6).locked().findings("C1"))
        .extracting(Finding::key)
        .doesNotContain("check.c1.zone");
  }

  @Test
  void ofTwoZonesTheOneThatNoLockedJointCrossesIsNamed() {
    Sketch two = across(144).keepClear("drain", -10, 230, 154, 230, 154, 266, -10, 266);
    assertThat(two.findings("C1")).hasSize(2);
    assertThat(two.joint(72, 0, 72, 200).locked().findings("C1"))
        .extracting(f -> f.arguments().getFirst())
        .containsExactly("drain");
  }

  @Test
  void aLockedJointThatStopsShortCanBeCarriedOn() {
    assertThat(Sketch.rectangle(200, 100).joint(100, 0, 100, 50).locked().findings("C1")).isEmpty();
  }

  @Test
  void ofTwoLockedJointsBesideAPanelTheNearerIsNamed() {
    Sketch two =
        Sketch.rectangle(200, 200).joint(40, 0, 40, 36.923).locked().joint(0, 60, 104, 0).locked();
    assertThat(two.findings("C1"))
        .filteredOn(f -> f.key().equals("check.c1.lockedSharp"))
        .extracting(f -> f.joint().orElseThrow())
        .contains("J2");
  }

  @Test
  void anotherObjectNearbyMayShareItsBoxOut() {
    assertThat(twoPosts(70).findings("C1")).isEmpty();
    assertThat(twoPosts(100).findings("C1"))
        .extracting(f -> f.arguments().getFirst())
        .containsExactly("post");
  }

  /** A hemmed post and a second one so far to its right, outside the zone. */
  private static Sketch twoPosts(double apart) {
    return hemmed(48, 200).post("next", 200 + 8 + apart, 200, 8);
  }

  @Test
  void anObjectWhoseBoxOutMayReachAnOpeningNeedsNoJointFromIt() {
    assertThat(hemmed(48, 200).opening(100, 190, 170, 190, 170, 210, 100, 210).findings("C1"))
        .isEmpty();
    assertThat(hemmed(48, 200).opening(100, 190, 150, 190, 150, 210, 100, 210).findings("C1"))
        .hasSize(1);
  }
}
