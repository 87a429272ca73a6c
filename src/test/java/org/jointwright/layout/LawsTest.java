package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What may not change a layout. */
class LawsTest {
  private static final String L = "L_drive_36x44_4in";
  private static final String TRAPEZOID = "trapezoid_16to28x30_4in";
  private static final String STEPS = "steps_four_of_4ft_4in";

  private static List<Point> corners(String name) {
    return Cases.plan(name).slabs().getFirst().outline().ring().vertices();
  }

  private static Layout laid(List<Point> corners) {
    Slab slab = Slab.of("slab", Outline.of(corners));
    return LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(slab)));
  }

  /** Every joint's ends, less {@code by}, to a thousandth of an inch, in a fixed order. */
  private static List<String> ends(Layout layout, Point by) {
    List<String> found = new ArrayList<>();
    for (Joint j : layout.slabs().getFirst().joints()) {
      List<String> ends =
          List.of(print(j.path().start().minus(by)), print(j.path().end().minus(by)));
      found.add(ends.stream().sorted().toList().toString());
    }
    return found.stream().sorted().toList();
  }

  private static String print(Point p) {
    return String.format(
        Locale.ROOT, "%.3f %.3f", Math.rint(p.x() * 1e3) / 1e3 + 0.0, p.y() + 1e-6);
  }

  @ParameterizedTest
  @ValueSource(strings = {L, TRAPEZOID, STEPS})
  void whereTheOutlineBeginsDoesNotMatter(String name) {
    List<Point> corners = corners(name);
    List<Point> turned = new ArrayList<>(corners.subList(2, corners.size()));
    turned.addAll(corners.subList(0, 2));
    assertThat(ends(laid(turned), new Point(0, 0))).isEqualTo(ends(laid(corners), new Point(0, 0)));
  }

  @ParameterizedTest
  @ValueSource(strings = {L, TRAPEZOID, STEPS})
  void whichWayRoundTheOutlineRunsDoesNotMatter(String name) {
    List<Point> corners = corners(name);
    assertThat(ends(laid(corners.reversed()), new Point(0, 0)))
        .isEqualTo(ends(laid(corners), new Point(0, 0)));
  }

  @ParameterizedTest
  @ValueSource(strings = {L, TRAPEZOID, STEPS})
  void whereTheSlabStandsDoesNotMatter(String name) {
    Point by = new Point(1234, -777);
    List<Point> moved = corners(name).stream().map(p -> p.plus(by)).toList();
    assertThat(ends(laid(moved), by)).isEqualTo(ends(laid(corners(name)), new Point(0, 0)));
  }

  @ParameterizedTest
  @ValueSource(strings = {L, "fixed_drain_24x20_5in", "multi_drive_approach_walk"})
  void layingTwiceGivesTheSame(String name) {
    Plan plan = Cases.plan(name);
    assertThat(LayoutEngine.lay(plan)).isEqualTo(LayoutEngine.lay(plan));
  }
}
