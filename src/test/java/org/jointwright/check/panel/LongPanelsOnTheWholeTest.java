package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.Subject;
import org.junit.jupiter.api.Test;

/** S4 by NRMCA Concrete in Practice 6: panels no longer than 1.5 times their width on the whole. */
class LongPanelsOnTheWholeTest {
  private static Sketch pair(double length) {
    return Sketch.rectangle(2 * length, 60).aspect(2).joint(length, 0, length, 60);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void squarePanelsPass() {
    assertThat(pair(60).findings("S4")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void longPanelsAreOneFindingForTheSlabThoughThePlanLetsEachBeSo() {
    assertThat(pair(114).broken("M2")).isEmpty();
    assertThat(pair(114).findings("S4"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s4.long");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.subject()).isEqualTo(new Subject.OnSlab());
              assertThat(f.measured()).isEqualTo(1.9);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void oneAndAHalfPasses() {
    assertThat(pair(90.5).findings("S4")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreThanTheToleranceOverItIsLong() {
    assertThat(pair(90.7).findings("S4")).hasSize(1);
  }

  @Test
  void aSlabOfOnePanelIsAsLongAsItsOutline() {
    assertThat(Sketch.rectangle(114, 60).aspect(2).findings("S4")).isEmpty();
  }
}
