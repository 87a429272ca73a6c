package org.jointwright.check.wish;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.Subject;
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
}
