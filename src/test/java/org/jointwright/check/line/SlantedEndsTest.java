package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** S5 by the Highway Engineering Handbook: joints meet edges at 90 degrees, 15 off at most. */
class SlantedEndsTest {
  private static Sketch slanted(double degrees) {
    double aside = 50 * Math.tan(Math.toRadians(degrees));
    return Sketch.rectangle(200, 100).joint(100 - aside, 0, 100 + aside, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aSquareJointPasses() {
    assertThat(slanted(0).findings("S5")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aSlantedJointIsFoundAtBothEnds() {
    assertThat(slanted(25).findings("S5"))
        .hasSize(2)
        .allSatisfy(
            f -> {
              assertThat(f.key()).isEqualTo("check.s5.offSquare");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.joint()).contains("J1");
              assertThat(f.measured()).isBetween(24.99, 25.01);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void fifteenDegreesAndTheTolerancePass() {
    assertThat(slanted(15.9).findings("S5")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreIsFound() {
    assertThat(slanted(16.1).findings("S5")).hasSize(2);
  }

  @Test
  void anArcIsMetAlongItsRadius() {
    Sketch round =
        Sketch.of(
            Vertex.arc(new Point(-60, 0), new Point(0, -60)),
            Vertex.arc(new Point(60, 0), new Point(0, 60)));
    assertThat(round.joint(0, -60, 0, 60).findings("S5")).isEmpty();
    double h = Math.sqrt(60 * 60 - 20 * 20);
    assertThat(round.joint(20, -h, 20, h).findings("S5"))
        .extracting(Finding::key)
        .containsExactly("check.s5.offRadius", "check.s5.offRadius");
  }

  @Test
  void anEndAtACornerIsLeftOut() {
    assertThat(Sketch.rectangle(200, 100).joint(0, 0, 200, 100).findings("S5")).isEmpty();
  }

  @Test
  void whatMakesASharpPointIsSaidByItsOwnRule() {
    assertThat(slanted(35).broken("M4")).isNotEmpty();
    assertThat(slanted(35).findings("S5")).isEmpty();
  }
}
