package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Sketch;
import org.jointwright.measure.Length;
import org.jointwright.plan.SpacingRule;
import org.jointwright.plan.Vertex;
import org.jointwright.practice.Flag;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** M1 by 30 thicknesses, ACI 330 guide, section 2.7; a 4 in slab may go 10 ft. */
class LongPanelsTest {
  @Case(Case.Kind.PASSES)
  @Test
  void aSlabOfTwoPanelsOfTenFeetPasses() {
    assertThat(Sketch.rectangle(240, 120).joint(120, 0, 120, 120).broken("M1")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aPanelOfTwelveFeetGivesOneFindingWithItsFigures() {
    assertThat(Sketch.rectangle(144, 120).findings("M1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.m1.tooLong");
              assertThat(f.measured()).isEqualTo(144);
              assertThat(f.limit()).isEqualTo(120);
              assertThat(f.panel()).contains("P1");
              assertThat(f.joint()).isEmpty();
              assertThat(f.arguments())
                  .containsExactly("P1", Length.inches(144), Length.inches(120));
              assertThat(f.sources().getFirst().document()).contains("ACI 330");
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void halfAnInchOverIsForgiven() {
    assertThat(Sketch.rectangle(120.49, 120).broken("M1")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreThanHalfAnInchOverIsNot() {
    assertThat(Sketch.rectangle(120.51, 120).broken("M1")).hasSize(1);
  }

  private static Sketch bowed(double height) {
    return Sketch.of(
        Vertex.at(new Point(0, 0)),
        Vertex.at(new Point(110, 0)),
        Vertex.arc(new Point(110, height - 10), new Point(55, height)),
        Vertex.at(new Point(0, height - 10)));
  }

  @Test
  void aPanelWithAnArcOfTheEdgeMayBeThreePercentLonger() {
    assertThat(bowed(124.0).broken("M1")).isEmpty();
    assertThat(bowed(124.2).broken("M1")).hasSize(1);
  }

  @Test
  void aWalkIsJointedByItsWidth() {
    Sketch walk = Sketch.rectangle(120, 48).rule(SpacingRule.WALK).joint(60, 0, 60, 48);
    assertThat(walk.broken("M1")).isEmpty();
    assertThat(Sketch.rectangle(62, 48).rule(SpacingRule.WALK).broken("M1")).hasSize(1);
  }

  @Test
  void theUsersOwnSpacingIsTheLimitAndTheSource() {
    assertThat(Sketch.rectangle(110, 110).spacing(96).findings("M1"))
        .singleElement()
        .satisfies(f -> assertThat(f.sources().getFirst().flag()).isEqualTo(Flag.PLAN));
  }

  @Test
  void thePanelIsMeasuredAlongItsOwnSidesHoweverItLies() {
    double c = 120 * Math.cos(0.3);
    double s = 120 * Math.sin(0.3);
    assertThat(Sketch.polygon(0, 0, c, s, c - s, s + c, -s, c).broken("M1")).isEmpty();
  }
}
