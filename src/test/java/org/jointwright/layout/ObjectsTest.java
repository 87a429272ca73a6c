package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Use;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fixed objects close together, and drains across a slab, laid by every rule that must hold. */
class ObjectsTest {
  private static final long SEED = 11;

  private static Outline rectangle(double left, double low, double right, double high) {
    return Outline.of(
        List.of(
            new Point(left, low),
            new Point(right, low),
            new Point(right, high),
            new Point(left, high)));
  }

  private static FixedObject drain(String id, Outline outline) {
    return new FixedObject(
        id, "pad", FixedKind.DRAIN, new FixedShape.Outlined(outline, Kept.NOTHING), Kept.NOTHING);
  }

  private static FixedObject post(String id, double x, double y, double diameter) {
    FixedShape shape = new FixedShape.Round(new Point(x, y), Length.inches(diameter), Kept.NOTHING);
    return new FixedObject(id, "pad", FixedKind.POST, shape, Kept.NOTHING);
  }

  private static Layout lay(Outline outline, FixedObject... objects) {
    return LayoutEngine.lay(
        Plan.EMPTY.withSlabs(List.of(Slab.of("pad", outline))).withFixed(List.of(objects)));
  }

  private static void holds(String name, Layout layout) {
    assertThat(Checks.judge(layout).of(Severity.MUST)).as(name).isEmpty();
    assertThat(layout.slabs()).allSatisfy(s -> assertThat(s.loose()).as(name).isEmpty());
    assertThat(layout.slabs().getFirst().boxOuts())
        .as(name)
        .extracting(BoxOut::fixed)
        .containsExactlyInAnyOrderElementsOf(
            layout.plan().fixed().stream().map(FixedObject::id).toList());
  }

  /** Gaps from side to side, inches. */
  @ParameterizedTest
  @ValueSource(ints = {0, 12})
  void twoObjectsCloseTogetherAreLaidByTheRules(int gap) {
    Random random = new Random(SEED + gap);
    double size = 4 + 2 * random.nextInt(3);
    double x = 44 + random.nextInt(12);
    double y = 54 + random.nextInt(12);
    double right = x + size / 2 + gap;
    String name = "gap " + gap + " of seed " + SEED;
    holds(
        name,
        lay(
            rectangle(0, 0, 120, 120),
            post("a", x, y, size),
            drain("b", rectangle(right, y - 6, right + 12, y + 6))));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 4, 10})
  void drainAcrossASlabHasSquareJointsOnBothSides(int shortBy) {
    Random random = new Random(SEED + shortBy);
    double y = 105 + random.nextInt(24);
    Layout layout =
        lay(rectangle(0, 0, 192, 240), drain("drain", rectangle(shortBy, y, 192 - shortBy, y + 6)));
    holds("short by " + shortBy + " of seed " + SEED, layout);
    SlabLayout slab = layout.slabs().getFirst();
    assertThat(slab.slab().joints())
        .allSatisfy(
            j -> {
              Point along = j.path().end().minus(j.path().start()).unit();
              assertThat(Math.min(Math.abs(along.x()), Math.abs(along.y()))).isLessThan(1e-3);
            });
    // The joint on one side of the drain goes on from that on the other.
    assertThat(endsAt(slab, y - 3)).hasSize(1);
    assertThat(endsAt(slab, y + 9)).hasSize(1);
    assertThat(endsAt(slab, y + 9).getFirst())
        .isCloseTo(endsAt(slab, y - 3).getFirst(), within(1.0));
  }

  private static List<Double> endsAt(SlabLayout slab, double y) {
    return slab.slab().joints().stream()
        .filter(j -> j.kind() == org.jointwright.plan.JointKind.CONTRACTION)
        .flatMap(j -> List.of(j.path().start(), j.path().end()).stream())
        .filter(p -> Math.abs(p.y() - y) < 0.01)
        .map(Point::x)
        .toList();
  }

  @Test
  void sharedBoxOutIsListedForEachObjectWithOneRing() {
    Layout layout = lay(rectangle(0, 0, 120, 120), post("a", 54, 60, 8), post("b", 66, 60, 8));
    holds("two posts", layout);
    List<BoxOut> boxes = layout.slabs().getFirst().boxOuts();
    assertThat(boxes.get(0).outline()).isEqualTo(boxes.get(1).outline());
  }

  /**
   * A drive of 20 ft that flares to 24 ft at the street, 30 ft long, a cleanout 2 ft off the line
   * down its middle. Freed by stubs, it leaves a panel of 4 square feet; its box-out reaches that
   * line where what comes quickly is looked at twice.
   */
  @Test
  void cleanoutBesideTheMiddleOfAFlaredDriveLeavesNoScrap() {
    Outline drive =
        Outline.of(
            List.of(
                new Point(0, 0),
                new Point(0, -360),
                new Point(288, -360),
                new Point(288, -216),
                new Point(240, -144),
                new Point(240, 0)));
    Slab slab = Slab.of("pad", drive).withUse(Use.CAR).withThickness(Length.inches(5));
    FixedObject cleanout = post("cleanout", 120, -216, 4);
    Layout layout =
        LayoutEngine.lay(Plan.EMPTY.withSlabs(List.of(slab)).withFixed(List.of(cleanout)));
    holds("flared drive", layout);
    assertThat(layout.slabs().getFirst().panels())
        .allSatisfy(p -> assertThat(p.region().area()).isGreaterThan(20 * 144));
    assertThat(layout.slabs().getFirst().boxOuts())
        .singleElement()
        .satisfies(b -> assertThat(b.outline().ring().box().maxX()).isCloseTo(144, within(1.0)));
  }
}
