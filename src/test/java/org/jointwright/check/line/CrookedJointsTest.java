package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.junit.jupiter.api.Test;

/** S10 by the Highway Engineering Handbook: joints are straight; the eye sees one degree. */
class CrookedJointsTest {
  private static Sketch slanted(double degrees) {
    double aside = 50 * Math.tan(Math.toRadians(degrees));
    return Sketch.rectangle(200, 100).joint(100 - aside, 0, 100 + aside, 100);
  }

  /** A slab whose upper side rises; a line that turns by that much where it crosses another. */
  private static Sketch bent(double degrees) {
    double rise = 100 * Math.tan(Math.toRadians(degrees));
    return Sketch.polygon(0, 0, 200, 0, 200, 200 + 2 * rise, 0, 200)
        .joint(100, 0, 100, 200 + rise)
        .joint(0, 100, 100, 100)
        .joint(100, 100, 200, 100 + rise);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aSquareJointPasses() {
    assertThat(slanted(0).findings("S10")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aJointALittleOffIsFoundOnce() {
    assertThat(slanted(5).findings("S10"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s10.slants");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.joint()).contains("J1");
              assertThat(f.measured()).isBetween(4.99, 5.01);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void oneDegreePasses() {
    assertThat(slanted(0.99).findings("S10")).isEmpty();
    assertThat(bent(0.99).findings("S10")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreIsSeen() {
    assertThat(slanted(1.02).findings("S10")).hasSize(1);
    assertThat(bent(1.02).findings("S10"))
        .extracting(Finding::key)
        .containsExactly("check.s10.bends");
  }

  @Test
  void whatStandsFarOffIsADiagonalOnPurpose() {
    assertThat(slanted(15.1).findings("S10")).isEmpty();
  }

  @Test
  void cornersAtBothEndsForceALine() {
    Sketch joined = Sketch.polygon(0, 0, 100, 0, 100, 100, 95, 100, 0, 100).joint(100, 0, 95, 100);
    assertThat(joined.findings("S10")).isEmpty();
  }

  @Test
  void betweenSidesThatRunTogetherALineMayRunTogetherToo() {
    Sketch fan = Sketch.polygon(0, 0, 120, 0, 110, 100, 10, 100).joint(90, 0, 85, 100);
    assertThat(fan.findings("S10")).isEmpty();
  }

  @Test
  void whereEachHalfIsSquareToItsOwnEdgeTheEdgesForceTheBend() {
    double lean = 200 * Math.tan(Math.toRadians(3));
    double rise = 100 * Math.tan(Math.toRadians(3));
    Sketch s =
        Sketch.polygon(0, 0, 210, 0, 210 - lean, 200, 0, 200)
            .joint(100, 0, 100, 200)
            .joint(0, 100, 100, 100)
            .joint(100, 100, 204.5, 100 + rise * 1.045);
    assertThat(s.findings("S10")).isEmpty();
  }

  @Test
  void whatTheUserLockedIsMeantSo() {
    assertThat(slanted(5).locked().findings("S10")).isEmpty();
  }

  @Test
  void aLineThatBendsBecauseItsJointSlantsIsFoundOnce() {
    // A level edge this time: the half that rises stands off by itself, whichever is listed first.
    double rise = 100 * Math.tan(Math.toRadians(3));
    Sketch level = Sketch.rectangle(200, 200).joint(100, 0, 100, 200);
    assertThat(level.joint(0, 100, 100, 100).joint(100, 100, 200, 100 + rise).findings("S10"))
        .extracting(Finding::key)
        .containsExactly("check.s10.slants");
    Sketch first = Sketch.rectangle(200, 200).joint(100, 0, 100, 200);
    assertThat(first.joint(100, 100, 200, 100 + rise).joint(0, 100, 100, 100).findings("S10"))
        .extracting(Finding::key)
        .containsExactly("check.s10.slants");
  }

  @Test
  void aSlantElsewhereHidesNoBend() {
    double aside = 50 * Math.tan(Math.toRadians(5));
    double rise = 100 * Math.tan(Math.toRadians(3));
    Sketch both =
        Sketch.polygon(0, 0, 200, 0, 200, 200 + 2 * rise, 0, 200)
            .joint(100, 0, 100, 200 + rise)
            .joint(0, 100, 100, 100)
            .joint(100, 100, 200, 100 + rise)
            .joint(50 - aside, 0, 50 + aside, 100);
    assertThat(both.findings("S10"))
        .extracting(Finding::key)
        .containsExactlyInAnyOrder("check.s10.slants", "check.s10.bends");
  }

  @Test
  void besideSidesThatRunTogetherALineThatLeansFartherThanBothSlants() {
    for (double to : new double[] {66, 94}) {
      Sketch fan = Sketch.polygon(0, 0, 120, 0, 110, 100, 10, 100).joint(80, 0, to, 100);
      assertThat(fan.findings("S10")).hasSize(1);
    }
  }

  @Test
  void aBendBetweenTwoThatAreLockedIsMeantSo() {
    double rise = 100 * Math.tan(Math.toRadians(5));
    Sketch slab =
        Sketch.polygon(0, 0, 200, 0, 200, 200 + 2 * rise, 0, 200).joint(100, 0, 100, 200 + rise);
    slab.joint(0, 100, 100, 100).locked().joint(100, 100, 200, 100 + rise);
    assertThat(slab.findings("S10")).hasSize(1);
    assertThat(slab.locked().findings("S10")).isEmpty();
  }
}
