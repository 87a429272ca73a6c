package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.Subject;
import org.junit.jupiter.api.Test;

/** S3, this program's own figure: the areas' deviation is at most half their mean. */
class UnevenPanelsTest {
  /** Two panels of these widths: the deviation over the mean is their difference over the sum. */
  private static Sketch widths(double a, double b) {
    return Sketch.rectangle(a + b, 100).joint(a, 0, a, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void panelsOfASizePass() {
    assertThat(widths(100, 100).findings("S3")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aLargePanelBesideASmallOneIsOneFindingForTheSlab() {
    assertThat(widths(160, 40).findings("S3"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s3.uneven");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.subject()).isEqualTo(new Subject.OnSlab());
              assertThat(f.measured()).isEqualTo(0.6);
              assertThat(f.limit()).isEqualTo(0.5);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void threeToOneIsHalfTheMean() {
    assertThat(widths(150, 50).findings("S3")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aHairMoreIsUneven() {
    assertThat(widths(150.1, 49.9).findings("S3")).hasSize(1);
  }

  @Test
  void aTipThatACornerJointCutsOffIsNoPanel() {
    Sketch s = Sketch.rectangle(200, 100).joint(100, 0, 100, 100).cornerJoint(20, 0, 0, 20);
    assertThat(s.findings("S3")).isEmpty();
  }
}
