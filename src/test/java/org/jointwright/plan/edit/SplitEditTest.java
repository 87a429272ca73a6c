package org.jointwright.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class SplitEditTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Outline box(double x, double y, double wide, double high) {
    return Outline.of(List.of(p(x, y), p(x + wide, y), p(x + wide, y + high), p(x, y + high)));
  }

  private static Joint joint(String id, double y) {
    Path path = Path.straight(p(0, y), p(240, y));
    return Joint.of(id, JointKind.CONTRACTION, path, Purpose.SPACING).withLocked(true);
  }

  /** 20 by 30 ft; the house along the left side, which runs down, with a door from 24 to 204. */
  private static Plan plan() {
    EdgeSetting house =
        EdgeSetting.against(Against.BUILDING)
            .withFeatures(List.of(Feature.of(FeatureKind.GARAGE_DOOR, 24, 204)));
    Slab drive =
        Slab.of("drive", box(0, 0, 240, 360))
            .withEdges(Map.of(3, house))
            .withOpenings(
                List.of(
                    new Opening(box(30, 30, 24, 24), Map.of(), Kept.NOTHING),
                    new Opening(box(90, 300, 24, 24), Map.of(), Kept.NOTHING)))
            .withKeepClear(List.of(KeepClear.of("sewer", box(150, 200, 30, 100))))
            .withLaid(List.of(joint("J1", 120), joint("J2", 300).withLocked(false)), List.of());
    FixedObject post =
        new FixedObject(
            "post",
            "drive",
            FixedKind.POST,
            new FixedShape.Round(p(200, 320), Length.inches(8), Kept.NOTHING),
            Kept.NOTHING);
    return Plan.EMPTY.withSlabs(List.of(drive)).withFixed(List.of(post));
  }

  private static Plan split(Plan plan, Point from, Point to) {
    return new SplitEdit.Split("drive", from, to).applyTo(plan);
  }

  private static double area(Plan plan, int slab) {
    return plan.slabs().get(slab).outline().ring().signedArea();
  }

  @Test
  void thePartsHoldWhatIsInThem() {
    Plan parted = split(plan(), p(0, 240), p(240, 240));
    assertThat(parted.slabs()).extracting(Slab::id).containsExactly("drive", "drive 2");
    assertThat(area(parted, 0)).isEqualTo(240 * 240);
    assertThat(area(parted, 1)).isEqualTo(240 * 120);
    Slab low = parted.slabs().getFirst();
    Slab high = parted.slabs().getLast();
    assertThat(low.openings()).hasSize(1);
    assertThat(high.openings()).hasSize(1);
    assertThat(low.joints()).extracting(Joint::id).containsExactly("J1");
    assertThat(high.joints()).as("only what is locked stays").isEmpty();
    assertThat(parted.fixed().getFirst().slab()).isEqualTo("drive 2");
    assertThat(low.keepClear()).as("a zone on the line keeps both parts clear").hasSize(1);
    assertThat(high.keepClear()).hasSize(1);
  }

  @Test
  void theDoorIsPartedWithItsSide() {
    Plan parted = split(plan(), p(0, 240), p(240, 240));
    assertThat(doors(parted.slabs().getFirst())).containsExactly(0.0, 84.0);
    assertThat(doors(parted.slabs().getLast())).containsExactly(24.0, 120.0);
  }

  private static List<Double> doors(Slab slab) {
    return slab.edges().values().stream()
        .peek(s -> assertThat(s.against()).isEqualTo(Against.BUILDING))
        .flatMap(s -> s.features().stream())
        .flatMap(f -> List.of(f.from(), f.to()).stream())
        .toList();
  }

  @Test
  void fromCornerToCornerNoSideIsLeftOver() {
    Plan bare = Plan.EMPTY.withSlabs(List.of(Slab.of("drive", box(0, 0, 240, 360))));
    Plan parted = split(bare, p(0.2, 0.1), p(240, 360));
    assertThat(parted.slabs()).allSatisfy(s -> assertThat(s.outline().vertices()).hasSize(3));
  }

  @Test
  void aBowIsPartedTrue() {
    Plan bare =
        Plan.EMPTY.withSlabs(
            List.of(
                Slab.of(
                    "drive",
                    new Outline(
                        List.of(
                            Vertex.arc(p(0, 0), p(120, -40)),
                            Vertex.at(p(240, 0)),
                            Vertex.at(p(240, 360)),
                            Vertex.at(p(0, 360)))))));
    Plan parted = split(bare, p(120, -40), p(120, 360));
    assertThat(area(parted, 0) + area(parted, 1)).isCloseTo(area(bare, 0), within(1e-6));
    assertThat(area(parted, 0)).isCloseTo(area(parted, 1), within(1e-6));
  }

  @Test
  void aLineThroughAnOpeningOrBesideTheOutlineIsRefused() {
    assertThatThrownBy(() -> split(plan(), p(0, 40), p(240, 40)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> split(plan(), p(0, 240), p(230, 240)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> split(plan(), p(0, 240), p(0, 240.3)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatWasPartedIsJoinedAgainAsItWas() {
    Plan parted = split(plan(), p(0, 240), p(240, 240));
    assertThat(SplitEdit.canJoin(parted, "drive", "drive 2")).isTrue();
    Plan one = new SplitEdit.Join("drive", "drive 2").applyTo(parted);
    assertThat(one.slabs()).hasSize(1);
    Slab drive = one.slabs().getFirst();
    assertThat(drive.outline().ring().signedArea()).isCloseTo(240 * 360, within(1e-9));
    assertThat(drive.outline().vertices()).as("no corner is left in a side").hasSize(4);
    assertThat(drive.openings()).hasSize(2);
    assertThat(one.fixed().getFirst().slab()).isEqualTo("drive");
    assertThat(drive.keepClear()).as("the zone is one again").hasSize(1);
    assertThat(drive.edges().values())
        .singleElement()
        .satisfies(
            s -> {
              assertThat(s.against()).isEqualTo(Against.BUILDING);
              assertThat(s.features().stream().mapToDouble(f -> f.to() - f.from()).sum())
                  .isEqualTo(180);
            });
  }

  @Test
  void aSharedPartOfASideIsEnough() {
    Plan two =
        Plan.EMPTY.withSlabs(
            List.of(
                Slab.of("drive", box(0, 0, 240, 360)), Slab.of("walk", box(240, 100, 200, 48))));
    Plan one = new SplitEdit.Join("drive", "walk").applyTo(two);
    assertThat(one.slabs()).hasSize(1);
    assertThat(area(one, 0)).isEqualTo(240 * 360 + 200 * 48);
    assertThat(one.slabs().getFirst().outline().vertices()).hasSize(8);
    Plan other = new SplitEdit.Join("walk", "drive").applyTo(two);
    assertThat(area(other, 0)).isEqualTo(area(one, 0));
    assertThat(other.slabs().getFirst().id()).isEqualTo("walk");
  }

  @Test
  void slabsApartOrAtACornerOnlyAreNotJoined() {
    Plan apart =
        Plan.EMPTY.withSlabs(
            List.of(
                Slab.of("a", box(0, 0, 100, 100)),
                Slab.of("b", box(101, 0, 100, 100)),
                Slab.of("c", box(100, 100, 100, 100))));
    assertThat(SplitEdit.canJoin(apart, "a", "b")).isFalse();
    assertThat(SplitEdit.canJoin(apart, "a", "c")).isFalse();
    assertThat(SplitEdit.canJoin(apart, "a", "a")).isFalse();
    assertThatThrownBy(() -> new SplitEdit.Join("a", "b").applyTo(apart))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatTheyEncloseBecomesAnOpening() {
    Outline horseshoe =
        Outline.of(
            List.of(
                p(0, 0),
                p(300, 0),
                p(300, 300),
                p(200, 300),
                p(200, 100),
                p(100, 100),
                p(100, 300),
                p(0, 300)));
    Plan two =
        Plan.EMPTY.withSlabs(
            List.of(Slab.of("pad", horseshoe), Slab.of("bar", box(0, 300, 300, 60))));
    Plan one = new SplitEdit.Join("pad", "bar").applyTo(two);
    Slab pad = one.slabs().getFirst();
    assertThat(pad.outline().ring().signedArea()).isEqualTo(300 * 360);
    assertThat(pad.openings()).hasSize(1);
    assertThat(pad.openings().getFirst().outline().ring().signedArea()).isEqualTo(100 * 200);
  }

  @Test
  void partingAndJoiningLosesNoConcreteWhateverTheLine() {
    for (long seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      Outline outline =
          new Outline(
              List.of(
                  Vertex.at(p(0, 0)),
                  random.nextBoolean()
                      ? Vertex.arc(p(240 + random.nextInt(60), 0), p(330, 100))
                      : Vertex.at(p(240 + random.nextInt(60), 0)),
                  Vertex.at(p(250, 200 + random.nextInt(100))),
                  Vertex.at(p(-random.nextInt(50), 330))));
      Plan whole = Plan.EMPTY.withSlabs(List.of(Slab.of("drive", outline)));
      var edges = outline.ring().edges();
      int one = random.nextInt(4);
      int other = (one + 1 + random.nextInt(3)) % 4;
      Point from = edges.get(one).at(0.1 + 0.8 * random.nextDouble());
      Point to = edges.get(other).at(0.1 + 0.8 * random.nextDouble());
      Plan parted = split(whole, from, to);
      assertThat(area(parted, 0) + area(parted, 1))
          .as("seed %d", seed)
          .isCloseTo(area(whole, 0), within(1e-6));
      Optional<Plan> joined = Optional.of(new SplitEdit.Join("drive", "drive 2").applyTo(parted));
      assertThat(area(joined.orElseThrow(), 0))
          .as("seed %d", seed)
          .isCloseTo(area(whole, 0), within(1e-6));
    }
  }
}
