package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.check.Case;
import org.jointwright.check.Sketch;
import org.jointwright.practice.Cited;
import org.junit.jupiter.api.Test;

/** M5 by the ACPA wiki on jointing: no slab under 2 ft wide. */
class NarrowPanelsTest {
  private static Sketch strip(double width) {
    return Sketch.rectangle(100, 120).joint(width, 0, width, 120);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aPanelOfTwoFeetPasses() {
    assertThat(strip(24).broken("M5")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aStripOfOneFootGivesOneFinding() {
    assertThat(strip(12).findings("M5"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.measured()).isCloseTo(12, within(1e-9));
              assertThat(f.limit()).isEqualTo(24);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void halfAnInchLessIsForgiven() {
    assertThat(strip(23.51).broken("M5")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreThanHalfAnInchLessIsNot() {
    assertThat(strip(23.49).broken("M5")).hasSize(1);
  }

  @Test
  void whereTheSlabItselfIsNarrowerItsPanelsMayBe() {
    assertThat(Sketch.rectangle(18, 48).joint(0, 24, 18, 24).broken("M5")).isEmpty();
  }

  @Test
  void aNarrowSlabSplitAlongItsLengthBreaks() {
    assertThat(Sketch.rectangle(18, 48).joint(9, 0, 9, 48).broken("M5")).hasSize(2);
  }

  @Test
  void aChoiceOfThePlanIsNamedAsSuch() {
    assertThat(strip(12).minPanel(30).findings("M5").getFirst().sources())
        .containsExactly(Cited.plan());
    assertThat(strip(12).findings("M5").getFirst().sources()).doesNotContain(Cited.plan());
  }
}
