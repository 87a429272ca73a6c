package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.junit.jupiter.api.Test;

class JudgedTest {
  private static Sketch slab() {
    return Sketch.rectangle(240, 120)
        .joint(80, 0, 80, 120)
        .joint(JointKind.CONSTRUCTION, 160, 0, 160, 120)
        .filler(0, 0, 0, 120);
  }

  @Test
  void withoutAJointTheOthersStay() {
    Judged without = Evidence.of(slab()).without("J1");
    assertThat(without.slab().joints()).extracting(Joint::id).containsExactly("J2", "J3");
    assertThat(without.faces()).hasSize(2);
    assertThat(without.plan().slabs()).containsExactly(without.slab());
    assertThat(Evidence.of(slab()).withOnly(List.of()).faces()).hasSize(1);
  }

  @Test
  void jointsWithoutALengthAreNone() {
    Judged judged = Evidence.of(slab().joint(40, 0, 40, 0.4).joint(50, 0, 50, 0.5));
    assertThat(judged.joints()).extracting(Joint::id).containsExactly("J1", "J2", "J3", "J5");
  }

  @Test
  void edgesAreToldByTheKindOfTheirJoints() {
    Judged judged = Evidence.of(slab());
    assertThat(judged.edgesOf(JointKind.CONTRACTION)).hasSize(1);
    assertThat(judged.edgesOf(JointKind.CONTRACTION).getFirst().start().x()).isEqualTo(80);
    assertThat(judged.edgesOf(JointKind.ISOLATION).getFirst().start().x()).isZero();
  }

  @Test
  void theNeighboursFillerAndEdgesAreKnown() {
    Sketch next =
        Sketch.polygon(240, 0, 340, 0, 340, 120, 240, 120)
            .opening(280, 40, 300, 40, 300, 60, 280, 60)
            .filler(240, 0, 240, 120)
            .joint(290, 0, 290, 40);
    Judged judged = Evidence.of(slab().beside("next", next));
    assertThat(judged.fillerOfAllSlabs())
        .extracting(e -> e.start().x())
        .containsExactly(0.0, 240.0);
    assertThat(judged.edgesOfOtherSlabs()).hasSize(8);
    assertThat(judged.edgesOfOtherSlabs()).allMatch(e -> e.start().x() >= 240);
  }

  @Test
  void whatIsLockedIsThatOfThePlanThatWasAsked() {
    Sketch locked = Sketch.rectangle(240, 120).joint(80, 0, 80, 120).locked().joint(90, 0, 90, 120);
    Judged judged = Evidence.of(locked, slab());
    assertThat(judged.locked()).extracting(Joint::id).containsExactly("J1");
    assertThat(Evidence.of(slab(), locked).locked()).isEmpty();
  }

  @Test
  void theLargestPanelIsNoTip() {
    Judged judged = Evidence.of(slab());
    assertThat(judged.largestPanel().orElseThrow().measures().area()).isEqualTo(9600);
    Judged tip =
        Evidence.of(
            Sketch.polygon(0, 0, 200, 0, 200, 200)
                .cornerJoint(18, 0, 18 * Math.sqrt(0.5), 18 * Math.sqrt(0.5)));
    assertThat(tip.faces()).hasSize(2);
    assertThat(tip.panels()).containsExactly(tip.largestPanel().orElseThrow());
  }

  @Test
  void fillerBetweenTwoPanelsIsAJointAndOneAgainstNothingAnEdge() {
    Judged judged = Evidence.of(Sketch.rectangle(240, 120).filler(120, 0, 120, 120));
    assertThat(judged.faces()).hasSize(2);
    assertThat(judged.faces().getFirst().steps().filter(s -> !s.hard())).hasSize(1);
  }

  @Test
  void theLargestPanelIsThatOfTheLargestArea() {
    for (double x : new double[] {40, 200}) {
      Judged two = Evidence.of(Sketch.rectangle(240, 120).joint(x, 0, x, 120));
      assertThat(two.largestPanel().orElseThrow().measures().area()).isEqualTo(200 * 120);
    }
  }

  @Test
  void onlyABoxOutThatIsRoundHasSoftSides() {
    assertThat(boxedOut(8).faces()).allMatch(f -> f.steps().anyMatch(s -> s.soft()));
    assertThat(boxedOut(4).faces()).noneMatch(f -> f.steps().anyMatch(s -> s.soft()));
  }

  private static Judged boxedOut(int sides) {
    double[] xy = new double[2 * sides];
    for (int i = 0; i < sides; i++) {
      xy[2 * i] = 120 + 12 * Math.cos(2 * Math.PI * i / sides);
      xy[2 * i + 1] = 60 + 12 * Math.sin(2 * Math.PI * i / sides);
    }
    return Evidence.of(Sketch.rectangle(240, 120).post(120, 60, 8).boxOut(xy));
  }
}
