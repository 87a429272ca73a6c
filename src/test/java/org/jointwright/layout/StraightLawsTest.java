package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.figure.Figures;
import org.jointwright.file.PlanWriter;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How a slab is drawn may not change what its layout comes to. */
class StraightLawsTest {
  private static final long SEED = 5;

  /** A search that follows another order of equals may end this much dearer. */
  private static final double ALIKE = 1.005;

  private static Figures figures(Plan plan) {
    return Figures.of(plan, LayoutEngine.first(plan));
  }

  private static void assertAlike(String how, Figures one, Figures other) {
    assertThat(counts(other)).as(how).isEqualTo(counts(one));
    assertThat(other.cost()).as(how).isBetween(one.cost() / ALIKE, one.cost() * ALIKE);
  }

  private static String counts(Figures f) {
    return f.tees() + " tees, " + f.ys() + " ys, " + f.panels() + " panels";
  }

  private static String bytes(Plan plan) {
    return PlanWriter.write(LayoutEngine.first(plan).plan());
  }

  @ParameterizedTest
  @EnumSource(
      value = StraightPlans.Kind.class,
      mode = EnumSource.Mode.EXCLUDE,
      // Box-outs are chosen by the layouts that come of them: seconds each.
      names = {"POST", "DRAIN"})
  void howItIsDrawnDoesNotMatter(StraightPlans.Kind kind) {
    Plan plan = StraightPlans.of(kind, SEED);
    String name = kind + " of seed " + SEED;
    Figures figures = figures(plan);
    Plan moved = Turned.begunAt(Turned.shifted(plan, new Point(3456, -789)), 2);
    assertAlike("moved, begun elsewhere: " + name, figures, figures(moved));
    Plan turned = Turned.quarter(Turned.mirrored(plan));
    assertAlike("turned and mirrored: " + name, figures, figures(turned));
  }

  @ParameterizedTest
  @EnumSource(
      value = StraightPlans.Kind.class,
      names = {"L", "SKEW", "BENT_WALK", "OPENING"})
  void layingTwiceGivesTheSameBytes(StraightPlans.Kind kind) {
    Plan plan = StraightPlans.of(kind, SEED);
    assertThat(bytes(plan)).as(kind + " of seed " + SEED).isEqualTo(bytes(plan));
  }
}
