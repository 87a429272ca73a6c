package org.jointwright.layout.boxout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import org.jointwright.measure.Length;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoxOutsTest {
  private static final Slab SLAB =
      Slab.of("slab", rectangle(new Point(0, 0), new Point(240, 0), new Point(0, 180)));

  private static Outline rectangle(Point corner, Point u, Point v) {
    return Outline.of(List.of(corner, corner.plus(u), corner.plus(u).plus(v), corner.plus(v)));
  }

  private static FixedObject post(double x, double y, double diameter) {
    FixedShape shape = new FixedShape.Round(new Point(x, y), Length.inches(diameter), Kept.NOTHING);
    return new FixedObject("post", "slab", FixedKind.POST, shape, Kept.NOTHING);
  }

  private static FixedObject box(double x, double y, Point u, Point v) {
    FixedShape shape = new FixedShape.Outlined(rectangle(new Point(x, y), u, v), Kept.NOTHING);
    return new FixedObject("box", "slab", FixedKind.DRAIN, shape, Kept.NOTHING);
  }

  private static List<Ring> choices(FixedObject object) {
    return BoxOuts.choices(SLAB, List.of(object), false).stream()
        .flatMap(List::stream)
        .flatMap(w -> w.boxes().stream())
        .map(b -> b.outline().ring())
        .toList();
  }

  /** Source: common practice, no source: 3 in clear all round. */
  private static void standsClear(FixedObject object, Ring ring) {
    Ring own = object.shape().ring();
    for (Edge e : ring.edges()) {
      boolean onSlabsEdge = SLAB.outline().ring().distance(e.at(0.5)) < 0.01;
      for (int i = 0; i <= 10 && !onSlabsEdge; i++) {
        Point p = e.at(i / 10.0);
        assertThat(own.contains(p)).isFalse();
        assertThat(own.distance(p)).isBetween(3 - 0.01, 36.0);
      }
    }
  }

  @Test
  void amidTheSlabASquareOnItsCornerComesFirstAndARoundOneNext() {
    List<Ring> found = choices(post(100, 90, 8));
    assertThat(found.get(0).vertices())
        .anyMatch(p -> p.distance(new Point(110, 90)) < 0.01)
        .hasSize(4);
    assertThat(found.get(1).edges()).hasSize(2).allMatch(e -> e instanceof Arc);
    assertThat(found.get(1).area()).isCloseTo(Math.PI * 49, within(0.01));
    found.forEach(r -> standsClear(post(100, 90, 8), r));
  }

  @Test
  void longDrainHasRoundEnds() {
    FixedObject drain = box(60, 90, new Point(96, 0), new Point(0, 6));
    Ring first = choices(drain).getFirst();
    assertThat(first.edges()).hasSize(4).filteredOn(e -> e instanceof Arc).hasSize(2);
    standsClear(drain, first);
  }

  @Test
  void noSquareOnItsCornerReachesFartherThanThreeFeetFromALongDrain() {
    FixedObject drain = box(60, 90, new Point(120, 0), new Point(0, 6));
    assertThat(choices(drain)).isNotEmpty().allSatisfy(r -> standsClear(drain, r));
  }

  @Test
  void postAtAnEdgeHasHalfAtThatEdge() {
    FixedObject post = post(100, 4, 8);
    List<Ring> found = choices(post);
    assertThat(found.get(0).vertices())
        .hasSize(3)
        .filteredOn(p -> Math.abs(p.y()) < 1e-6)
        .hasSize(2);
    assertThat(found.get(1).edges())
        .anyMatch(e -> e instanceof Arc a && Math.abs(a.centre().y()) < 1e-6);
    found.forEach(r -> standsClear(post, r));
  }

  @Test
  void postAFootFromAnEdgeHasHalfAtThatEdgeBeforeWhatLeavesANeckBeside() {
    Ring first = choices(post(100, 12, 4)).getFirst();
    assertThat(first.vertices()).filteredOn(p -> Math.abs(p.y()) < 1e-6).hasSize(2);
    standsClear(post(100, 12, 4), first);
  }

  @Test
  void roundPostHasNoSquareTurnedAtRandom() {
    assertThat(choices(post(100, 90, 8)))
        .filteredOn(r -> r.edges().stream().allMatch(e -> e.turn() == 0))
        .allSatisfy(
            r -> {
              Point u = r.edges().getFirst().direction(0);
              // Along the slab, or halfway between.
              assertThat(Math.abs(u.x() * u.y() * (u.x() * u.x() - u.y() * u.y())))
                  .isCloseTo(0, within(1e-9));
            });
  }

  @Test
  void postInACornerHasTheCornerCutOff() {
    FixedObject post = post(5, 5, 6);
    Ring first = choices(post).getFirst();
    assertThat(first.vertices()).hasSize(3).anyMatch(p -> p.norm() < 1e-6);
    standsClear(post, first);
  }

  @Test
  void objectOutsideTheSlabHasNone() {
    assertThat(choices(post(400, 90, 8))).isEmpty();
  }

  @Test
  void turnedObjectMayHaveASquareOfItsOwn() {
    Point u = new Point(18, 0).turned(Math.toRadians(30));
    FixedObject column = box(100, 90, u, u.left());
    assertThat(choices(column))
        .filteredOn(r -> r.edges().size() == 4)
        .anySatisfy(
            r ->
                assertThat(r.edges().getFirst().direction(0).dot(u.unit().turned(Math.PI / 4)))
                    .satisfiesAnyOf(
                        d -> assertThat(d).isCloseTo(0, within(1e-6)),
                        d -> assertThat(Math.abs(d)).isCloseTo(1, within(1e-6))));
  }

  @Test
  void boxOutThatALockedJointMeetsStays() {
    BoxOut old =
        new BoxOut(
            "post", rectangle(new Point(90, 80), new Point(20, 0), new Point(0, 20)), Kept.NOTHING);
    Joint locked =
        Joint.of(
                "J1",
                JointKind.CONTRACTION,
                org.jointwright.shape.Path.straight(new Point(100, 0), new Point(100, 80)),
                org.jointwright.plan.Purpose.SPACING)
            .withLocked(true);
    Slab slab = SLAB.withLaid(List.of(locked), List.of(old));
    assertThat(BoxOuts.choices(slab, List.of(post(100, 90, 8)), false))
        .containsExactly(List.of(Around.one(old)));
  }

  @Test
  void fillerLeavesOutTheSlabsOwnEdge() {
    Around half = BoxOuts.choices(SLAB, List.of(post(100, 4, 8)), false).getFirst().getFirst();
    List<Joint> filler = BoxOuts.filler(half.boxes(), SLAB);
    assertThat(filler).hasSize(1);
    assertThat(filler.getFirst().path().edges()).hasSize(2);
    assertThat(filler.getFirst().kind()).isEqualTo(JointKind.ISOLATION);
  }

  /**
   * The slab is cut in halves at 120 in: what stands 13 to 40 in from there may reach out to it.
   */
  @ParameterizedTest
  @CsvSource({"107, false", "106, true", "81, true", "80, false"})
  void reachesOutToTheLineThatWouldRunBeside(double x, boolean reaches) {
    FixedObject post = post(x, 40, 8);
    List<Ring> out =
        choices(post).stream()
            .filter(r -> r.vertices().stream().filter(v -> v.x() == 120).count() == 2)
            .toList();
    assertThat(out).hasSize(reaches ? 1 : 0);
    out.forEach(r -> standsClear(post, r));
    // Round where no line is: a joint leaves there square to the line.
    out.forEach(r -> assertThat(r.edges()).filteredOn(e -> e.turn() != 0).hasSize(1));
  }

  /** No box-out reaches farther than 3 ft from its object: our own figure. */
  @ParameterizedTest
  @CsvSource({"39, true", "40, false"})
  void reachesOutToAnEdgeWithinThreeFeet(double x, boolean reaches) {
    assertThat(choices(post(x, 40, 8)))
        .filteredOn(r -> r.vertices().stream().filter(v -> Math.abs(v.x()) < 1e-6).count() == 2)
        .hasSize(reaches ? 1 : 0);
  }

  /** The same slab with its upper right corner moved. */
  private static Slab nudged(double dx, double dy) {
    return Slab.of(
        "slab",
        Outline.of(
            List.of(
                new Point(0, 0),
                new Point(240, 0),
                new Point(240 + dx, 180 + dy),
                new Point(0, 180))));
  }

  private static List<BoxOut> like(BoxOut was, Slab slab, double moved, FixedObject... objects) {
    return BoxOuts.like(List.of(was), slab, List.of(objects), false, moved).orElse(List.of());
  }

  /** How far the corners and middles of edges of two outlines stand apart. */
  private static double apart(Around one, BoxOut other) {
    List<Edge> a = one.boxes().getFirst().outline().ring().edges();
    List<Edge> b = other.outline().ring().edges();
    double most = a.size() == b.size() ? 0 : 1e9;
    for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
      most = Math.max(most, a.get(i).start().distance(b.get(i).start()));
      most = Math.max(most, a.get(i).at(0.5).distance(b.get(i).at(0.5)));
    }
    return most;
  }

  /** Whichever choice it was, the choice nearest to it on the slab as it is now. */
  @Test
  void whatItWasIsFoundAgainOnASlabThatChangedALittle() {
    int found = 0;
    for (FixedObject object :
        List.of(
            post(120, 90, 6),
            post(120, 8, 6),
            post(238, 90, 8),
            box(60, 90, new Point(40, 0), new Point(0, 8)))) {
      Slab now = nudged(-0.5, -0.5);
      List<Around> before = BoxOuts.choices(SLAB, List.of(object), false).getFirst();
      List<Around> after = BoxOuts.choices(now, List.of(object), false).getFirst();
      for (int i = 0; i < before.size(); i++) {
        BoxOut was = before.get(i).boxes().getFirst();
        Around nearest =
            after.stream().min(Comparator.comparingDouble(w -> apart(w, was))).orElseThrow();
        assertThat(like(was, now, 1.2, object))
            .as("%s %d", object, i)
            .isEqualTo(apart(nearest, was) <= 1.2 ? nearest.boxes() : List.of());
        found += like(was, now, 1.2, object).size();
      }
    }
    // A ring that begins at another corner is not seen to be the same.
    assertThat(found).isGreaterThan(8);
  }

  @Test
  void whatMovedFartherIsNotTakenForTheSame() {
    FixedObject object = post(238, 90, 8);
    BoxOut was =
        BoxOuts.choices(SLAB, List.of(object), false).getFirst().getFirst().boxes().getFirst();
    assertThat(like(was, nudged(-6, 0), 1, object)).isEmpty();
  }

  @Test
  void objectsCloseTogetherAreForTheChoicesToTell() {
    FixedObject one = post(120, 90, 6);
    FixedObject near =
        new FixedObject("other", "slab", FixedKind.POST, post(150, 90, 6).shape(), Kept.NOTHING);
    BoxOut was =
        BoxOuts.choices(SLAB, List.of(one), false).getFirst().getFirst().boxes().getFirst();
    assertThat(like(was, SLAB, 1, one)).containsExactly(was);
    assertThat(like(was, SLAB, 1, one, near)).isEmpty();
  }
}
