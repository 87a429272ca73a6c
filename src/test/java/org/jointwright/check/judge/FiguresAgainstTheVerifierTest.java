package org.jointwright.check.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.check.Verified;
import org.jointwright.check.figure.EndCount;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The independent verifier's figures of sound layouts and ours; see the folder's README. */
class FiguresAgainstTheVerifierTest {
  private static final Verified LAID = new Verified("laid");
  private static final List<String> HEAD =
      List.of(
          "plan",
          "slab",
          "feet",
          "tees",
          "ys",
          "cv",
          "aspect",
          "ends",
          "atCorners",
          "square",
          "marks",
          "lineUpEnds",
          "missed",
          "thin",
          "feather",
          "shallow",
          "panels",
          "tips",
          "cost");

  /** One slab's row of the table. */
  private record Row(List<String> cells) {
    String plan() {
      return cells.get(0);
    }

    String slab() {
      return cells.get(1);
    }

    double of(String column) {
      return Double.parseDouble(cells.get(HEAD.indexOf(column)));
    }

    int count(String column) {
      return (int) of(column);
    }

    @Override
    public String toString() {
      return plan() + " " + slab();
    }
  }

  static Stream<Row> rows() {
    return LAID.rows("figures.csv").stream().map(Row::new);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theFiguresAreTheSame(Row row) {
    Plan plan = LAID.plan(row.plan());
    SlabFigures ours = Figures.of(Layouts.of(plan)).slab(row.slab()).orElseThrow();
    assertThat(ours.feet()).isCloseTo(row.of("feet"), within(0.002));
    assertThat(ours.tees()).isEqualTo(row.count("tees"));
    assertThat(ours.ys()).isEqualTo(row.count("ys"));
    assertThat(ours.cv()).isCloseTo(row.of("cv"), within(0.0005));
    // The verifier turns arcs into chords before it seeks the squarest of rectangles that tie.
    assertThat(ours.meanAspect()).isCloseTo(row.of("aspect"), within(0.006));
    assertThat(ours.missed()).isEqualTo(row.count("missed"));
    assertThat(ours.panels()).isEqualTo(row.count("panels"));
    assertThat(ours.tips()).isEqualTo(row.count("tips"));
    assertThat(ours.cost()).isCloseTo(row.of("cost"), within(0.01));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theEndsAreTheSame(Row row) {
    Plan plan = LAID.plan(row.plan());
    EndCount ours = Figures.of(Layouts.of(plan)).slab(row.slab()).orElseThrow().ends();
    if (plan.fixedIn(row.slab()).isEmpty()) {
      assertThat(ours.onEdges()).isEqualTo(row.count("ends"));
      assertThat(ours.squareShare()).isCloseTo(row.of("square"), within(0.0001));
    } else {
      // The verifier counts ends at the corners of box-outs, where joints belong, as off square.
      assertThat(ours.onEdges()).isLessThanOrEqualTo(row.count("ends"));
      assertThat(ours.square()).isEqualTo((int) Math.rint(row.of("square") * row.count("ends")));
    }
    if (UnitSystem.of(plan.unit()) == UnitSystem.FEET_INCHES) {
      assertThat(ours.wholeShare()).isCloseTo(row.of("marks"), within(0.0001));
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theFindingsAreAsMany(Row row) {
    Plan plan = LAID.plan(row.plan());
    List<Finding> found =
        Checks.judge(Layouts.of(plan)).findings().stream()
            .filter(f -> f.slab().equals(row.slab()))
            .toList();
    // Off-square ends at the corners of box-outs are the verifier's alone: see above.
    int atBoxOuts =
        row.count("ends")
            - Figures.of(Layouts.of(plan)).slab(row.slab()).orElseThrow().ends().onEdges();
    int slanted = row.count("ends") - (int) Math.rint(row.of("square") * row.count("ends"));
    assertThat(count(found, "S5")).isEqualTo(slanted - atBoxOuts);
    assertThat(count(found, "S7")).isEqualTo(row.count("missed"));
    assertThat(found.stream().filter(f -> f.key().equals("check.s8.thin")))
        .hasSize(row.count("thin"));
    assertThat(count(found, "S9")).isEqualTo(row.count("shallow"));
    assertThat(count(found, "N1")).isEqualTo(row.count("feather"));
  }

  private static int count(List<Finding> findings, String rule) {
    return (int) findings.stream().filter(f -> f.rule().equals(rule)).count();
  }

  @Test
  void theTableHoldsEveryPlan() {
    assertThat(rows().map(Row::plan).distinct())
        .containsExactlyElementsOf(LAID.expected().keySet());
  }
}
