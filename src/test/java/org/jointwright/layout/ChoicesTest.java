package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of the layouts offered beside the shortest. */
class ChoicesTest {
  private static final String PATIO = "rect_patio_13x17_4in";
  private static final String SKEW = "parallelogram_75deg_20x36_5in";
  private static final String BEND = "walk_5ft_45deg_bend_4in";

  private static List<Offer> offers(String name) {
    Plan plan = Cases.plan(name);
    return LayoutEngine.choices(plan, plan.slabs().getFirst().id(), () -> true);
  }

  private static SlabFigures figures(Offer offer) {
    return Figures.of(offer.layout()).slabs().getFirst();
  }

  private static Optional<Offer> squarest(List<Offer> offers) {
    return offers.stream().filter(o -> o.preference() == Preference.Overall.SQUAREST).findFirst();
  }

  private static boolean isClean(Layout layout) {
    return Checks.judge(layout).findings().stream().noneMatch(f -> f.severity() == Severity.MUST);
  }

  @ParameterizedTest
  @ValueSource(strings = {PATIO, SKEW, BEND})
  void eachIsBestAtWhatItIsOfferedFor(String name) {
    List<Offer> offers = offers(name);
    SlabFigures shortest = figures(offers.getFirst());
    assertThat(offers.size()).isBetween(2, 3);
    assertThat(offers.getFirst().preference()).isEqualTo(Preference.SHORTEST);
    for (Offer o : offers) {
      assertThat(figures(o).cost()).as("%s", o.preference()).isGreaterThan(0.95 * shortest.cost());
      assertThat(figures(o).cost()).as("%s", o.preference()).isLessThan(1.51 * shortest.cost());
      assertThat(isClean(o.layout())).as("%s", o.preference()).isTrue();
    }
    assertThat(squarest(offers))
        .hasValueSatisfying(
            o -> assertThat(figures(o).meanAspect()).isLessThan(shortest.meanAspect()));
  }

  /** A skew slab: joints along one side are square to another only if that is asked. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void jointsLineUpWithTheEdgeThatIsAsked(int edge) {
    Plan plan = Cases.plan(SKEW);
    Slab asked = plan.slabs().getFirst();
    Preference lined = new Preference.LinedUpWith(edge);
    Plan wish = plan.withSlabs(List.of(asked.withJointing(asked.jointing().withPreference(lined))));
    Point u = asked.outline().ring().edges().get(edge).direction(0);
    Layout layout = LayoutEngine.lay(wish);
    assertThat(isClean(layout)).isTrue();
    assertThat(layout.plan().slabs().getFirst().joints())
        .isNotEmpty()
        .allMatch(j -> runsAlong(j.path().edges().getFirst(), u));
  }

  private static boolean runsAlong(Edge joint, Point u) {
    Point v = joint.direction(0);
    return Math.min(Math.abs(u.cross(v)), Math.abs(u.dot(v))) < 0.035;
  }

  @Test
  void whereTheShortestIsSquareNothingElseIsOffered() {
    assertThat(offers("rect_drive_20x40_4in").size()).isOne();
  }

  @Test
  void chosenOneIsLaidAgainFromThePlan() {
    for (Offer o : offers(PATIO)) {
      assertThat(LayoutEngine.lay(o.layout().plan())).isEqualTo(o.layout());
    }
  }

  @Test
  void offersDifferByMoreThanAnInch() {
    List<Offer> offers = offers(PATIO);
    List<Joint> some = cut(offers.getFirst());
    List<Joint> others = cut(offers.getLast());
    assertThat(some)
        .anyMatch(j -> others.stream().noneMatch(k -> k.path().distance(j.path().start()) <= 1));
  }

  private static List<Joint> cut(Offer offer) {
    return offer.layout().slabs().getFirst().joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .toList();
  }
}
