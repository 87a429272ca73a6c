package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.Subject;
import org.jointwright.measure.LengthUnit;
import org.junit.jupiter.api.Test;

/** S6 by UFC 3-260-02: easily measured spacings, a whole inch to 1/16 in. */
class OffMarkJointsTest {
  private static Sketch at(double x) {
    return Sketch.rectangle(200, 100).joint(x, 0, x, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void wholeInchesPass() {
    assertThat(at(90).findings("S6")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void endsOffTheInchAreOneFindingForTheSlab() {
    assertThat(at(90.5).joint(0, 50.4, 200, 50.4).findings("S6"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s6.inch");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.subject()).isEqualTo(new Subject.OnSlab());
              assertThat(f.measured()).isEqualTo(4);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aSixteenthOffPasses() {
    assertThat(at(90 + 1.0 / 16).findings("S6")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreIsOff() {
    assertThat(at(90.07).findings("S6")).hasSize(1);
  }

  @Test
  void eitherCornerOfTheSideMayBeMeasuredFrom() {
    Sketch odd = Sketch.rectangle(200.5, 100).joint(90.5, 0, 90.5, 100);
    assertThat(odd.findings("S6")).isEmpty();
  }

  @Test
  void aMetricPlanIsMeasuredInTenMillimetres() {
    double cm = LengthUnit.CENTIMETRE.inches();
    Sketch whole = Sketch.rectangle(500.3 * cm, 100).joint(250 * cm, 0, 250 * cm, 100);
    assertThat(whole.metric().findings("S6")).isEmpty();
    Sketch half = Sketch.rectangle(500.3 * cm, 100).joint(250.5 * cm, 0, 250.5 * cm, 100);
    assertThat(half.metric().findings("S6"))
        .extracting(Finding::key)
        .containsExactly("check.s6.metric");
  }

  @Test
  void aLockedJointStandsWhereTheUserPutIt() {
    assertThat(at(90.5).locked().findings("S6")).isEmpty();
  }

  @Test
  void aFeatureAGivenJointAndANeighboursJointForceTheirPlace() {
    assertThat(at(90.5).feature(0, 90.5, 150).findings("S6")).isEmpty();
    assertThat(at(90.5).given(90.5, 0, 90.5, -50).findings("S6")).isEmpty();
    Sketch walk =
        Sketch.polygon(0, 100, 200, 100, 200, 160, 0, 160).joint(90.5, 100, 90.5, 160).locked();
    assertThat(at(90.5).beside("walk", walk).findings("S6")).isEmpty();
  }

  @Test
  void anInsideCornerForcesTheWholeLine() {
    Sketch ell =
        Sketch.polygon(0, 0, 200, 0, 200, 60, 90.5, 60, 90.5, 120, 0, 120)
            .joint(90.5, 60, 90.5, 30)
            .joint(90.5, 30, 90.5, 0)
            .joint(0, 30, 200, 30);
    assertThat(ell.findings("S6")).isEmpty();
  }

  @Test
  void betweenSidesThatAreNotParallelOneEndIsMeasured() {
    Sketch wedge = Sketch.polygon(0, 0, 200, 0, 170.3, 100, 0, 100);
    assertThat(wedge.joint(0, 50, 185.15, 50).findings("S6")).isEmpty();
  }

  @Test
  void aFeaturesFarEndForcesTooAndOneElsewhereDoesNot() {
    assertThat(at(90.5).feature(0, 20, 90.5).findings("S6")).isEmpty();
    assertThat(at(90.5).feature(0, 20, 60).findings("S6")).hasSize(1);
    assertThat(at(90.5).given(10, 0, 10, -50).findings("S6")).hasSize(1);
    assertThat(at(90.5).given(91.4, 0, 91.4, -50).findings("S6")).isEmpty();
    assertThat(at(90.5).given(91.6, 0, 91.6, -50).findings("S6")).hasSize(1);
  }

  @Test
  void betweenParallelSidesBothEndsAreMeasured() {
    Sketch aslant = Sketch.rectangle(200, 100).joint(90, 0, 90.5, 100);
    assertThat(aslant.findings("S6"))
        .singleElement()
        .satisfies(f -> assertThat(f.measured()).isEqualTo(1));
  }

  @Test
  void betweenSidesThatAreNotParallelOneEndMustBeWhole() {
    Sketch wedge = Sketch.polygon(0, 0, 200, 0, 170.3, 100, 0, 100);
    assertThat(wedge.joint(0, 50.4, 185.03, 50.4).findings("S6")).hasSize(1);
  }

  @Test
  void whatGoesOnFromALockedJointInItsLineStandsWhereThatDoes() {
    for (boolean up : new boolean[] {true, false}) {
      for (boolean onUp : new boolean[] {true, false}) {
        Sketch line = Sketch.rectangle(200, 100);
        line.joint(90.5, up ? 0 : 30, 90.5, up ? 30 : 0).locked();
        line.joint(90.5, onUp ? 30 : 100, 90.5, onUp ? 100 : 30);
        assertThat(line.findings("S6")).isEmpty();
      }
    }
  }

  @Test
  void whatDoesNotGoOnInItsLineIsMeasured() {
    Sketch square =
        Sketch.rectangle(200, 100).joint(0, 50, 90.5, 50).locked().joint(90.5, 50, 90.5, 100);
    assertThat(square.findings("S6")).hasSize(1);
    Sketch apart =
        Sketch.rectangle(200, 100).joint(90.5, 0, 90.5, 30).locked().joint(90.5, 40, 90.5, 100);
    assertThat(apart.findings("S6")).hasSize(1);
  }
}
