package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.practice.Cited;
import org.junit.jupiter.api.Test;

/** M2 by NRMCA Concrete in Practice 6: 1.5; 2.0 beside a corner under 75 degrees is our own. */
class StretchedPanelsTest {
  /** 100 in wide and 6 in thick, so that M1 has nothing to say. */
  private static Sketch panel(double length) {
    return Sketch.rectangle(length, 100).thick(6);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aPanelHalfAgainAsLongAsWidePasses() {
    assertThat(panel(150).broken("M2")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aPanelTwiceAsLongAsWideGivesOneFinding() {
    assertThat(Sketch.rectangle(160, 80).thick(6).findings("M2"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.measured()).isCloseTo(2, within(1e-9));
              assertThat(f.limit()).isEqualTo(1.5);
              assertThat(f.severity()).isEqualTo(Severity.MUST);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aHundredthOverIsForgiven() {
    assertThat(panel(150.9).broken("M2")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreThanAHundredthOverIsNot() {
    assertThat(panel(151.1).broken("M2")).hasSize(1);
  }

  @Test
  void thePlansOwnChoiceCounts() {
    assertThat(panel(130).aspect(1.25).broken("M2")).hasSize(1);
    assertThat(panel(178).aspect(2.0).broken("M2")).isEmpty();
  }

  /** A slab whose left side leans so that its lower left corner has that angle. */
  private static Sketch leaning(double degrees, double length) {
    double run = 60 / Math.tan(Math.toRadians(degrees));
    return Sketch.polygon(0, 0, length, 0, length, 60, run, 60).thick(6);
  }

  @Test
  void aPanelThatKeepsASharpCornerMayBeTwiceAsLong() {
    assertThat(leaning(72, 110).broken("M2")).isEmpty();
    assertThat(leaning(78, 110).broken("M2")).hasSize(1);
    assertThat(leaning(72, 122).broken("M2")).hasSize(1);
  }

  @Test
  void aSharpCornerThatAJointSplitsIsNoExcuse() {
    Sketch split = leaning(72, 110).joint(0, 0, 40, 60);
    assertThat(split.broken("M2")).isNotEmpty();
  }

  @Test
  void roundAVerySharpCornerTheFigureIsOnlyANote() {
    assertThat(Sketch.polygon(0, 0, 170, 0, 170, 68).thick(6).findings("M2"))
        .extracting(Finding::severity, Finding::key)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(Severity.NOTE, "check.m2.sharpCorner"));
  }

  @Test
  void theTipThatACornerJointCutsOffIsExempt() {
    Sketch wedge = Sketch.polygon(0, 0, 120, 0, 120, 100, 20, 60).thick(6);
    assertThat(wedge.cornerJoint(20, 0, 6.3, 18.9).findings("M2"))
        .extracting(f -> f.panel().orElseThrow())
        .isEqualTo(List.of());
  }

  @Test
  void twiceAsLongIsForgivenAHundredthToo() {
    assertThat(leaning(72, 120.3).broken("M2")).isEmpty();
    assertThat(leaning(72, 120.9).broken("M2")).hasSize(1);
  }

  @Test
  void aDegreeIsForgivenAtACornerThatExcuses() {
    // 75 degrees and one.
    assertThat(leaning(75.9, 110).broken("M2")).isEmpty();
    assertThat(leaning(76.1, 110).broken("M2")).hasSize(1);
  }

  @Test
  void aChoiceOfThePlanIsNamedAsSuch() {
    assertThat(panel(130).aspect(1.25).findings("M2").getFirst().sources())
        .containsExactly(Cited.plan());
    assertThat(panel(160).findings("M2").getFirst().sources()).doesNotContain(Cited.plan());
  }
}
