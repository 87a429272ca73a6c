package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Slabs with curved sides, whose lines would run out on an arc or meet it too flat. */
class DogLegsTest {
  private static final long SEED = 2;

  private static List<Edge> joints(Layout layout) {
    return layout.slabs().getFirst().joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .map(Joint::path)
        .map(p -> p.edges().getFirst())
        .toList();
  }

  /** How two joints that end at one place turn there, where that is 5 to 31 degrees. */
  private static List<Point> bends(List<Edge> joints) {
    List<Point> found = new ArrayList<>();
    for (Edge a : joints) {
      for (Edge b : joints) {
        if (a.end().distance(b.start()) < 0.1) {
          double turn = Math.toDegrees(Math.acos(a.direction(1).dot(b.direction(0))));
          if (turn > 5 && turn < 31) {
            found.add(a.end());
          }
        }
      }
    }
    return found;
  }

  private static Layout clean(Plan plan, String name) {
    Layout layout = LayoutEngine.lay(plan);
    assertThat(Checks.judge(layout).of(Severity.MUST)).as(name).isEmpty();
    return layout;
  }

  /** Without dog-legs a tip is left here where a column and a row cross beside the arc. */
  @Test
  void columnAndRowThatWouldCrossBesideTheArcAreBroughtToItTogether() {
    Plan plan = CurvedPlans.of(CurvedPlans.Kind.QUARTER_END, 1);
    assertThat(bends(joints(clean(plan, "quarter end of seed 1")))).isNotEmpty();
  }

  /** A leg bends only where another joint ends or crosses, or a panel had an inside corner. */
  @Test
  void aLineBendsOnlyWhereOthersMeetIt() {
    for (CurvedPlans.Kind kind :
        List.of(CurvedPlans.Kind.QUARTER_END, CurvedPlans.Kind.SLANTED_BOW)) {
      List<Edge> joints = joints(LayoutEngine.lay(CurvedPlans.of(kind, 2)));
      for (Point bend : bends(joints)) {
        assertThat(joints.stream().filter(j -> j.distance(bend) < 0.1).count())
            .as("joints at " + bend)
            .isGreaterThanOrEqualTo(3);
      }
    }
  }

  /** An invented slab of each kind keeps every rule that must hold, M4 on arcs among them. */
  @ParameterizedTest
  @EnumSource(CurvedPlans.Kind.class)
  void slabsWithCurvedSidesKeepEveryRule(CurvedPlans.Kind kind) {
    String name = kind + " of seed " + SEED;
    Layout layout = clean(CurvedPlans.of(kind, SEED), name);
    for (Edge joint : joints(layout)) {
      assertThat(leastAngleOnArcs(layout, joint)).as(name).isGreaterThan(59);
    }
  }

  private static double leastAngleOnArcs(Layout layout, Edge joint) {
    double least = 90;
    for (Edge edge : layout.slabs().getFirst().slab().outline().ring().edges()) {
      for (Point end : List.of(joint.start(), joint.end())) {
        double from = Math.min(edge.start().distance(end), edge.end().distance(end));
        if (edge instanceof Arc arc && edge.distance(end) < 0.1 && from > 1) {
          Point along = joint.direction(joint.nearest(end));
          double off = Math.abs(arc.centre().minus(end).unit().cross(along));
          least = Math.min(least, Math.toDegrees(Math.acos(Math.min(1, off))));
        }
      }
    }
    return least;
  }
}
