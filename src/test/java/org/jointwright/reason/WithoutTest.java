package org.jointwright.reason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Finding;
import org.jointwright.check.Sketch;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Source;
import org.jointwright.plan.Against;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What would be without a joint: 4 in slabs, so panels of at most 120 in. */
class WithoutTest {
  private static Reason of(Sketch sketch, String joint) {
    Plan plan = sketch.plan();
    return Reasons.of(plan, Layouts.of(plan), "slab", List.of(joint)).getFirst();
  }

  private static List<String> rules(Without without) {
    return without.breaks().stream().map(Finding::rule).distinct().toList();
  }

  @Test
  void withoutTheOnlyJointAPanelIsAsLongAsTheSlab() {
    Reason r = of(Sketch.rectangle(200, 100).joint(100, 0, 100, 100), "J1");
    Finding first = r.without().breaks().getFirst();
    assertThat(first.rule()).isEqualTo("M1");
    assertThat(first.measured()).isEqualTo(200);
    assertThat(first.limit()).isEqualTo(120);
    assertThat(r.without().after().longest()).isEqualTo(200);
    assertThat(r.without().before().longest()).isEqualTo(100);
  }

  @Test
  void whereNothingBreaksItIsSaidAndTheFiguresTellWhatGetsWorse() {
    Reason r = of(Sketch.rectangle(110, 100).joint(55, 0, 55, 100), "J1");
    assertThat(r.without().breaksNothing()).isTrue();
    assertThat(r.without().before().longest()).isEqualTo(100);
    assertThat(r.without().after().longest()).isEqualTo(110);
  }

  @Test
  void whatIsBrokenAlreadyIsNoReason() {
    // The right panel is too long with the joint and without it.
    Sketch sketch = Sketch.rectangle(330, 100).joint(50, 0, 50, 100).joint(100, 0, 100, 100);
    assertThat(rules(of(sketch, "J1").without())).isEmpty();
    assertThat(of(sketch, "J2").without().breaks().getFirst().measured()).isEqualTo(280);
  }

  @Test
  void aLineIsLeftOutWholeBesidesItsPieces() {
    Sketch sketch =
        Sketch.rectangle(160, 110)
            .joint(80, 0, 80, 110)
            .joint(0, 55, 80, 55)
            .joint(80, 55, 160, 55);
    Reason r = of(sketch, "J2");
    assertThat(r.without().joints()).containsExactly("J2");
    assertThat(r.withoutLine().orElseThrow().joints()).containsExactly("J2", "J3");
    assertThat(of(sketch, "J1").withoutLine()).isEmpty();
  }

  private static Sketch ell() {
    return Sketch.polygon(0, 0, 200, 0, 200, 100, 100, 100, 100, 200, 0, 200);
  }

  @Test
  void theLikelyCrackHalvesTheInsideCornerAndRunsToTheNextLine() {
    Reason r = of(ell().joint(100, 100, 0, 100).joint(50, 0, 50, 200), "J1");
    assertThat(rules(r.without())).contains("M3");
    LikelyCrack crack = r.cracks().getFirst();
    assertThat(crack.from()).isEqualTo(new Point(100, 100));
    assertThat(crack.to().distance(new Point(50, 50))).isLessThan(1e-6);
    assertThat(crack.meets()).isEqualTo(new Source.OnJoint("J2"));
    assertThat(crack.degrees()).isCloseTo(135, within(1e-9));
    assertThat(crack.source().reference()).contains("re-entrant");
  }

  @Test
  void theCrackRunsToTheEdgeWhereNoJointIsLeft() {
    LikelyCrack crack = of(ell().joint(100, 100, 0, 100), "J1").cracks().getFirst();
    assertThat(crack.to().distance(new Point(0, 0))).isLessThan(1e-6);
    assertThat(crack.meets()).isInstanceOf(Source.OnOutline.class);
  }

  @Test
  void aCornerThatAnotherJointServesDoesNotCrack() {
    Reason r = of(ell().joint(100, 100, 0, 100).joint(100, 100, 100, 0), "J1");
    assertThat(r.cracks()).isEmpty();
  }

  @Test
  void withoutFillerTheEdgeAgainstTheBuildingIsBare() {
    Sketch sketch = Sketch.rectangle(100, 100).edge(1, Against.BUILDING).filler(100, 0, 100, 100);
    Finding f = of(sketch, "J1").without().breaks().getFirst();
    assertThat(f.key()).isEqualTo("check.m7.bareBuilding");
    assertThat(f.measured()).isCloseTo(100, within(1.0));
  }

  @Test
  void thatAJointIsLockedIsNotWhatBreaks() {
    Joint locked =
        Joint.of(
                "J1",
                JointKind.CONTRACTION,
                Path.straight(new Point(55, 0), new Point(55, 100)),
                Purpose.SPACING)
            .withLocked(true);
    assertThat(of(Sketch.rectangle(110, 100).add(locked), "J1").without().breaksNothing()).isTrue();
  }

  @Test
  void aJointThatIsNotThereHasNoReasons() {
    Plan plan = ell().plan();
    assertThat(Reasons.of(plan, Layouts.of(plan), "slab", List.of("J9"))).isEmpty();
    assertThat(Reasons.of(plan, Layouts.of(plan), "no such slab")).isEmpty();
  }
}
