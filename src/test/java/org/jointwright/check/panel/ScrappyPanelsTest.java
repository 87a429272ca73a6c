package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.junit.jupiter.api.Test;

/** S8, this program's own figures: 60 % of the rectangle, a fifth of the mean panel. */
class ScrappyPanelsTest {
  /** A slab of one panel, the triangle under a square's diagonal cut back at both sharp ends. */
  private static Sketch wedge(double cut) {
    return Sketch.polygon(0, 0, 100, 0, 100, cut, cut, 100, 0, 100);
  }

  private static Sketch strip(double first) {
    return Sketch.rectangle(300, 100).joint(first, 0, first, 100).joint(150, 0, 150, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void rectanglesOfASizePass() {
    assertThat(strip(75).findings("S8")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aTriangleFillsHalfItsRectangle() {
    assertThat(Sketch.polygon(0, 0, 100, 0, 50, 86.6).findings("S8"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s8.thin");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.panel()).contains("P1");
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void threeFifthsOfTheRectanglePass() {
    // 1 - (1 - cut)^2 / 2 of the square: 0.60 at a cut of 10.56.
    assertThat(wedge(10.6).findings("S8")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aHairLessIsThin() {
    assertThat(wedge(10.5).findings("S8"))
        .extracting(Finding::key)
        .containsExactly("check.s8.thin");
  }

  @Test
  void aFifthOfTheMeanPanelIsTheSmallest() {
    // Three panels on 300 in: the mean is 100 in wide, a fifth of it 20.
    assertThat(strip(20).findings("S8")).isEmpty();
    assertThat(strip(19.9).findings("S8"))
        .extracting(Finding::key)
        .containsExactly("check.s8.small");
  }

  @Test
  void whatFillsTooLittleForAnyPanelIsSaidOnce() {
    Sketch hollow = Sketch.polygon(0, 0, 100, 0, 100, 10, 10, 10, 10, 100, 0, 100);
    assertThat(hollow.broken("M8")).isNotEmpty();
    assertThat(hollow.findings("S8")).isEmpty();
  }
}
