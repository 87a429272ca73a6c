package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.junit.jupiter.api.Test;

/** S9 by NRMCA Concrete in Practice 6: a quarter of the thickness, 1 in at least. */
class ShallowJointsTest {
  private static Sketch jointed(double thickness, How how, double depth) {
    return Sketch.rectangle(200, 100).thick(thickness).joint(100, 0, 100, 100).made(how, depth);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void anInchInFourInchesPasses() {
    assertThat(jointed(4, How.TOOLED, 1).findings("S9")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aThreeQuarterInchGrooverInFourInchesIsAQuarterInchShort() {
    assertThat(jointed(4, How.TOOLED, 0.75).findings("S9"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s9.tooled");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.limit() - f.measured()).isCloseTo(0.25, within(1e-12));
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aQuarterOfTheThicknessPasses() {
    assertThat(jointed(6, How.SAWN, 1.5).findings("S9")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aHairLessIsShallow() {
    assertThat(jointed(6, How.SAWN, 1.499).findings("S9"))
        .extracting(Finding::key)
        .containsExactly("check.s9.sawn");
  }

  @Test
  void anEarlyEntryCutNeedsAnInchWhateverTheThickness() {
    assertThat(jointed(8, How.EARLY_ENTRY, 1).findings("S9")).isEmpty();
    assertThat(jointed(8, How.EARLY_ENTRY, 0.9).findings("S9")).hasSize(1);
  }

  @Test
  void aJointWithoutADepthSaysNothing() {
    assertThat(Sketch.rectangle(200, 100).joint(100, 0, 100, 100).findings("S9")).isEmpty();
  }

  @Test
  void theFindingSaysHowMuchIsMissing() {
    assertThat(jointed(4, How.TOOLED, 0.75).findings("S9").getFirst().arguments())
        .endsWith(Length.inches(0.75), Length.inches(1), Length.inches(0.25));
  }
}
