package org.jointwright.check.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** M11, geometry of the plan: a slab lies beside another, not over it. */
class SlabsApartTest {
  private static final Slab PATIO = slab("patio", 0, 0, 240, 240);

  private static Outline box(double x1, double y1, double x2, double y2) {
    return Outline.of(
        List.of(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2)));
  }

  private static Slab slab(String id, double x1, double y1, double x2, double y2) {
    return Slab.of(id, box(x1, y1, x2, y2));
  }

  /** A walk under the patio that reaches so far into it, inches. */
  private static Slab walk(double into) {
    return slab("walk", 60, -200, 102, into);
  }

  private static List<Finding> found(Slab... slabs) {
    return Checks.judge(Layouts.of(Plan.EMPTY.withSlabs(List.of(slabs)))).findings().stream()
        .filter(f -> f.rule().equals("M11"))
        .toList();
  }

  @Case(Case.Kind.PASSES)
  @Test
  void slabsThatTouchAreApart() {
    assertThat(found(PATIO, walk(0))).isEmpty();
    assertThat(found(PATIO, walk(-10))).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aWalkOverThePatioIsSaidOnceAtTheWalkAndHowDeep() {
    assertThat(found(walk(12), PATIO)).isEqualTo(found(PATIO, walk(12)));
    assertThat(found(PATIO, walk(12)))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.MUST);
              assertThat(f.slab()).isEqualTo("walk");
              assertThat(f.arguments()).startsWith("walk", "patio");
              assertThat(f.measured()).isCloseTo(12, within(0.1));
              assertThat(PATIO.region().contains(f.at())).isTrue();
              assertThat(walk(12).region().contains(f.at())).isTrue();
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void sidesThatAreMeantAsOneAreForgiven() {
    assertThat(found(PATIO, walk(0.45))).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreIsNot() {
    assertThat(found(PATIO, walk(0.6))).hasSize(1);
  }

  @Test
  void deepIsHowFarItReachesInNotHowWideItIs() {
    assertThat(found(PATIO, walk(120)))
        .singleElement()
        .satisfies(f -> assertThat(f.measured()).isCloseTo(120, within(1e-6)));
  }

  @Test
  void ofTwoAlikeItIsSaidAtTheLater() {
    assertThat(found(slab("one", 0, 0, 100, 100), slab("two", 50, 0, 150, 100)))
        .extracting(Finding::slab)
        .containsExactly("two");
  }

  @Test
  void aSlabWhollyInAnotherLiesOverItUnlessItLiesInAnOpening() {
    Slab pad = slab("pad", 100, 100, 140, 140);
    assertThat(found(PATIO, pad))
        .singleElement()
        .satisfies(f -> assertThat(f.measured()).isCloseTo(40, within(0.1)));
    Opening room = new Opening(box(100, 100, 140, 140), java.util.Map.of(), Kept.NOTHING);
    assertThat(found(PATIO.withOpenings(List.of(room)), pad)).isEmpty();
  }

  @Test
  void slabsThatShareAnArcAreApart() {
    Slab round =
        Slab.of(
            "round",
            new Outline(
                List.of(
                    Vertex.at(new Point(0, 0)),
                    Vertex.arc(new Point(100, 0), new Point(120, 50)),
                    Vertex.at(new Point(100, 100)),
                    Vertex.at(new Point(0, 100)))));
    Slab outside =
        Slab.of(
            "outside",
            new Outline(
                List.of(
                    Vertex.at(new Point(100, 0)),
                    Vertex.at(new Point(300, 0)),
                    Vertex.at(new Point(300, 100)),
                    Vertex.arc(new Point(100, 100), new Point(120, 50)))));
    assertThat(found(round, outside)).isEmpty();
  }
}
