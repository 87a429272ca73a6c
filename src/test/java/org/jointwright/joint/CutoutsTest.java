package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.measure.Length;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class CutoutsTest {
  private static final Outline SQUARE = box(0, 0, 120, 120);

  private static Outline box(double x0, double y0, double x1, double y1) {
    return Outline.of(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
  }

  private static Plan with(Slab slab, double x, double y) {
    FixedShape post = new FixedShape.Round(new Point(x, y), Length.inches(8), Kept.NOTHING);
    return Plan.EMPTY
        .withSlabs(List.of(slab))
        .withFixed(List.of(new FixedObject("post", "s", FixedKind.POST, post, Kept.NOTHING)));
  }

  private static Slab laid(List<Joint> joints, List<BoxOut> boxOuts) {
    return Slab.of("s", SQUARE).withLaid(joints, boxOuts);
  }

  private static double area(Plan plan) {
    return Layouts.of(plan).slabs().getFirst().panels().stream().mapToDouble(Panel::area).sum();
  }

  @Test
  void aListedBoxOutIsLeftOut() {
    Plan plan =
        with(
            laid(List.of(), List.of(new BoxOut("post", box(48, 48, 72, 72), Kept.NOTHING))),
            60,
            60);
    assertThat(area(plan)).isCloseTo(14400 - 576, within(1e-9));
  }

  @Test
  void anObjectWithoutABoxOutTakesItsOwnGround() {
    assertThat(area(with(laid(List.of(), List.of()), 60, 60)))
        .isCloseTo(14400 - 16 * Math.PI, within(1e-6));
  }

  @Test
  void isolationRoundAnObjectLeavesOutWhatItEncloses() {
    Path ring = new Path(box(48, 48, 72, 72).ring().edges());
    Joint filler = Joint.of("J1", JointKind.ISOLATION, ring, Purpose.ISOLATION);
    assertThat(area(with(laid(List.of(filler), List.of()), 60, 60)))
        .isCloseTo(14400 - 576, within(1e-9));
  }

  @Test
  void aSlabThatIsSmallItselfIsNoBoxOut() {
    Outline small = box(0, 0, 48, 48);
    Path edge = Path.of(small.ring().edges().getFirst());
    Joint filler = Joint.of("J1", JointKind.ISOLATION, edge, Purpose.ISOLATION);
    Plan plan = with(Slab.of("s", small).withLaid(List.of(filler), List.of()), 24, 24);
    assertThat(area(plan)).isCloseTo(48 * 48 - 16 * Math.PI, within(1e-6));
  }

  @Test
  void mostOfASmallSlabIsNoBoxOutThoughFillerPartsIt() {
    Outline small = box(0, 0, 20, 20);
    Joint filler =
        Joint.of(
            "J1",
            JointKind.ISOLATION,
            Path.straight(new Point(0, 1), new Point(20, 1)),
            Purpose.ISOLATION);
    Plan plan = with(Slab.of("s", small).withLaid(List.of(filler), List.of()), 10, 10);
    assertThat(area(plan)).isCloseTo(20 * 20 - 16 * Math.PI, within(1e-6));
  }

  @Test
  void anObjectBesideTheSlabTakesNothing() {
    assertThat(area(with(laid(List.of(), List.of()), 200, 60))).isCloseTo(14400, within(1e-9));
  }

  @Test
  void fillerAHairOffTheBoxOutCutsNoSliver() {
    Path ring = new Path(box(47.7, 47.7, 72.3, 72.3).ring().edges());
    Joint filler = Joint.of("J1", JointKind.ISOLATION, ring, Purpose.ISOLATION);
    Plan plan =
        with(
            laid(List.of(filler), List.of(new BoxOut("post", box(48, 48, 72, 72), Kept.NOTHING))),
            60,
            60);
    assertThat(Layouts.of(plan).slabs().getFirst().panels()).hasSize(1);
  }

  @Test
  void contractionJointsRoundAnObjectEncloseNoBoxOut() {
    Path ring = new Path(box(48, 48, 72, 72).ring().edges());
    Joint cut = Joint.of("J1", JointKind.CONTRACTION, ring, Purpose.SPACING);
    assertThat(area(with(laid(List.of(cut), List.of()), 60, 60)))
        .isCloseTo(14400 - 16 * Math.PI, within(1e-6));
  }

  @Test
  void fillerFarFromTheObjectEnclosesNoBoxOut() {
    assertThat(area(with(laid(List.of(diamond(40)), List.of()), 60, 60)))
        .isCloseTo(14400 - 2 * 40 * 40, within(1e-6));
    assertThat(area(with(laid(List.of(diamond(41)), List.of()), 60, 60)))
        .isCloseTo(14400 - 16 * Math.PI, within(1e-6));
  }

  private static Joint diamond(double r) {
    List<Point> round =
        List.of(
            new Point(60 + r, 60),
            new Point(60, 60 + r),
            new Point(60 - r, 60),
            new Point(60, 60 - r),
            new Point(60 + r, 60));
    return Joint.of("J1", JointKind.ISOLATION, Path.through(round), Purpose.ISOLATION);
  }

  @Test
  void halfOfASlabMayBeABoxOutAndMoreMayNot() {
    Outline small = box(0, 0, 40, 20);
    assertThat(area(with(halved(small, 20), 10, 10))).isCloseTo(400, within(1e-9));
    assertThat(area(with(halved(small, 20.1), 10, 10))).isCloseTo(800 - 16 * Math.PI, within(1e-6));
  }

  private static Slab halved(Outline outline, double x) {
    Joint filler =
        Joint.of(
            "J1",
            JointKind.ISOLATION,
            Path.straight(new Point(x, 0), new Point(x, 20)),
            Purpose.ISOLATION);
    return Slab.of("s", outline).withLaid(List.of(filler), List.of());
  }

  @Test
  void anObjectThatFillerPartsStandsInNoOnePiece() {
    // A wedge of filler reaches into the post between the points that are asked first.
    List<Joint> filler = new ArrayList<>();
    filler.add(
        Joint.of(
            "J1",
            JointKind.ISOLATION,
            new Path(box(48, 48, 72, 72).ring().edges()),
            Purpose.ISOLATION));
    for (double y : new double[] {63, 69}) {
      filler.add(
          Joint.of(
              "J" + (int) y,
              JointKind.ISOLATION,
              Path.straight(new Point(60, 60), new Point(72, y)),
              Purpose.ISOLATION));
    }
    assertThat(area(with(laid(filler, List.of()), 60, 60)))
        .isCloseTo(14400 - 16 * Math.PI, within(1e-6));
  }

  @Test
  void aBoxOutWhoseObjectIsGoneIsNoneAndHidesNoOther() {
    Slab slab = laid(List.of(), List.of(new BoxOut("gone", box(10, 10, 30, 30), Kept.NOTHING)));
    assertThat(Cutouts.of(with(slab, 60, 60), slab))
        .extracting(c -> c.fixed() + " " + c.listed())
        .containsExactly("post false");
  }

  @Test
  void anObjectBesideTheSlabHasNoCutout() {
    Slab slab = laid(List.of(), List.of(new BoxOut("post", box(48, 48, 72, 72), Kept.NOTHING)));
    assertThat(Cutouts.of(with(slab, 200, 60), slab)).isEmpty();
    assertThat(Cutouts.of(with(slab, 60, 60), slab)).extracting(Cutout::listed).containsOnly(true);
  }

  @Test
  void anObjectStandsInTheSlabThatItTakesGroundOf() {
    assertThat(stands(round(60, 60))).isTrue();
    assertThat(stands(round(200, 60))).isFalse();
    // Over an edge, over a corner, with one corner of its own, round the whole slab.
    assertThat(stands(round(60, -2))).isTrue();
    assertThat(stands(round(-2, -2))).isTrue();
    assertThat(stands(outlined(box(110, 110, 160, 160)))).isTrue();
    assertThat(stands(outlined(box(-10, -10, 130, 130)))).isTrue();
    // A long drain across it, its ends and the middles of its sides beyond the slab.
    assertThat(stands(outlined(box(-300, 57, 140, 63)))).isTrue();
    assertThat(stands(outlined(box(57, -20, 63, 500)))).isTrue();
  }

  @Test
  void anObjectAgainstTheSlabStandsBesideIt() {
    assertThat(stands(outlined(box(120, 20, 150, 60)))).isFalse();
    assertThat(stands(outlined(box(-40, -30, 160, 0)))).isFalse();
    assertThat(stands(round(124, 60))).isFalse();
  }

  @Test
  void anObjectInAnOpeningStandsBesideTheConcrete() {
    Slab open =
        Slab.of("s", SQUARE)
            .withOpenings(List.of(new Opening(box(40, 40, 80, 80), Map.of(), Kept.NOTHING)));
    assertThat(stands(open, round(60, 60))).isFalse();
    assertThat(stands(open, outlined(box(40, 40, 80, 80)))).isFalse();
    assertThat(stands(open, outlined(box(45, 45, 60, 90)))).isTrue();
    assertThat(stands(open, round(60, 82))).isTrue();
  }

  private static FixedShape round(double x, double y) {
    return new FixedShape.Round(new Point(x, y), Length.inches(8), Kept.NOTHING);
  }

  private static FixedShape outlined(Outline outline) {
    return new FixedShape.Outlined(outline, Kept.NOTHING);
  }

  private static boolean stands(FixedShape shape) {
    return stands(Slab.of("s", SQUARE), shape);
  }

  private static boolean stands(Slab slab, FixedShape shape) {
    return Cutouts.standsIn(slab, new FixedObject("o", "s", FixedKind.POST, shape, Kept.NOTHING));
  }
}
