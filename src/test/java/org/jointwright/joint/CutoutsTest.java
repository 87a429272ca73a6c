package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
}
