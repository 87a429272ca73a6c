package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Use;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Stems and wings with two parallel sides, square to a third, on slabs that bow or slant elsewhere:
 * no joint in them slants. Common practice, no source.
 */
class SquareStemsTest {
  /** The sine of an eighth of a degree. */
  private static final double SQUARE = 0.002;

  private static final Map<String, Outline> OUTLINES =
      new TreeMap<>(
          Map.of(
              "a stem under a body with a bowed end", stem(9),
              "a longer one", stem(10.5),
              "a drive with one corner of its turn cut",
                  Symmetric.outline(0, 0, 12, 0, 12, 40, 16, 44, 28, 44, 28, 56, 0, 56),
              "wings beside a bay",
                  Symmetric.outline(0, 0, 24, 0, 24, 12, 18, 12, 15, 18, 9, 18, 6, 12, 0, 12)));

  private static Outline stem(double up) {
    return new Outline(
        List.of(
            at(0, 0),
            at(12, 0),
            at(12, up),
            Vertex.arc(at(30, up).at(), at(36, 20).at()),
            at(24, 30),
            at(0, 30)));
  }

  private static Vertex at(double x, double y) {
    return Vertex.at(new Point(12 * x, 12 * y));
  }

  /** Below this a slab is the stem or the wings alone; beyond a longer stem lines may lean. */
  private static double height(String what) {
    return what.equals("a longer one") ? 12 * 10.5 : Double.POSITIVE_INFINITY;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a stem under a body with a bowed end",
        "a longer one",
        "a drive with one corner of its turn cut",
        "wings beside a bay"
      })
  void noJointSlants(String what) {
    Slab slab = Slab.of("slab", OUTLINES.get(what)).withUse(Use.FOOT);
    Layout layout = LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(slab)));
    assertThat(Checks.judge(layout).of(Severity.MUST)).as(what).isEmpty();
    assertThat(layout.slabs().getFirst().joints())
        .as(what)
        .filteredOn(j -> j.kind() == JointKind.CONTRACTION)
        .filteredOn(j -> Math.min(j.path().start().y(), j.path().end().y()) < height(what) - 1)
        .isNotEmpty()
        .allSatisfy(
            j -> {
              Point u = j.path().end().minus(j.path().start()).unit();
              assertThat(Math.abs(u.x() * u.y())).isLessThan(SQUARE);
            });
  }
}
