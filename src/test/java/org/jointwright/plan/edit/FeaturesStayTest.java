package org.jointwright.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What stands along an edge stays where it is while the outline changes about it. */
class FeaturesStayTest {
  private static final Ref BACK = Ref.outline("drive", 2);

  /** A drive 20 ft by 40 ft with a garage door in its back edge, which runs from right to left. */
  private static final Plan DRIVE =
      new FeatureEdit.Add(BACK, Feature.of(FeatureKind.GARAGE_DOOR, 24, 216))
          .applyTo(
              new SlabEdit.SetEdge(BACK, EdgeSetting.against(Against.BUILDING))
                  .applyTo(
                      new SlabEdit.Add(
                              Slab.of(
                                  "drive",
                                  Outline.of(List.of(p(0, 0), p(240, 0), p(240, 480), p(0, 480)))))
                          .applyTo(Plan.EMPTY)));

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Slab drive(Plan plan) {
    return plan.slab("drive").orElseThrow();
  }

  private static List<Feature> at(Plan plan, int edge) {
    return drive(plan).edge(edge).features();
  }

  @Test
  void distancesCountFromTheFirstCornerWhereverItGoes() {
    Plan longer = new SlabEdit.MoveCorner(Ref.outline("drive", 2), p(300, 480)).applyTo(DRIVE);
    assertThat(at(longer, 2)).isEqualTo(at(DRIVE, 2));
  }

  @Test
  void edgeThatBecomesTooShortCutsTheFeature() {
    Plan shorter = new SlabEdit.MoveCorner(Ref.outline("drive", 3), p(100, 480)).applyTo(DRIVE);
    assertThat(at(shorter, 2)).containsExactly(Feature.of(FeatureKind.GARAGE_DOOR, 24, 140));
  }

  @Test
  void featureWithNoRoomLeftIsGoneAndTheWallStays() {
    Plan shorter = new SlabEdit.MoveCorner(Ref.outline("drive", 3), p(220, 480)).applyTo(DRIVE);
    assertThat(at(shorter, 2)).isEmpty();
    assertThat(drive(shorter).edge(2).against()).isEqualTo(Against.BUILDING);
  }

  @Test
  void cornerOnTheEdgeLeavesTheFeatureOnTheLargerPart() {
    // The edge runs from x = 240 to x = 0, the door from x = 216 to x = 24.
    Plan near = new SlabEdit.AddCorner(BACK, Vertex.at(p(200, 480))).applyTo(DRIVE);
    assertThat(at(near, 2)).isEmpty();
    assertThat(at(near, 3)).containsExactly(Feature.of(FeatureKind.GARAGE_DOOR, 0, 176));
    Plan far = new SlabEdit.AddCorner(BACK, Vertex.at(p(12, 480))).applyTo(DRIVE);
    assertThat(at(far, 2)).containsExactly(Feature.of(FeatureKind.GARAGE_DOOR, 24, 216));
    assertThat(at(far, 3)).isEmpty();
    assertThat(drive(far).edge(3).against()).isEqualTo(Against.BUILDING);
  }

  @Test
  void cornerOnAnEarlierEdgeMovesTheNumberOnly() {
    Plan plan =
        new SlabEdit.AddCorner(Ref.outline("drive", 0), Vertex.at(p(120, 0))).applyTo(DRIVE);
    assertThat(at(plan, 3)).isEqualTo(at(DRIVE, 2));
    assertThat(at(plan, 2)).isEmpty();
  }

  @Test
  void cornerPutOnAnEdgeAndTakenOutAgainLeavesTheDoorWhereItStood() {
    Plan with = new SlabEdit.AddCorner(BACK, Vertex.at(p(228, 480))).applyTo(DRIVE);
    assertThat(at(with, 3)).containsExactly(Feature.of(FeatureKind.GARAGE_DOOR, 12, 204));
    Plan without = new SlabEdit.RemoveCorner(Ref.outline("drive", 3)).applyTo(with);
    assertThat(at(without, 2)).containsExactly(Feature.of(FeatureKind.GARAGE_DOOR, 24, 216));
    assertThat(drive(without).edge(2).against()).isEqualTo(Against.BUILDING);
  }

  @Test
  void removingTheFirstCornerOfAllRenumbersTheLastEdge() {
    Plan door =
        new FeatureEdit.Add(Ref.outline("drive", 0), Feature.of(FeatureKind.WALK, 60, 120))
            .applyTo(DRIVE);
    Plan without = new SlabEdit.RemoveCorner(Ref.outline("drive", 0)).applyTo(door);
    // Corners are now (240, 0), (240, 480), (0, 480); the last edge runs back to (240, 0).
    Feature walk = at(without, 2).getFirst();
    Point from = drive(without).outline().ring().edges().get(2).direction(0);
    Point start = p(0, 480).plus(from.times(walk.from()));
    assertThat(walk.kind()).isEqualTo(FeatureKind.WALK);
    // The foot of (60, 0) on the line from (0, 480) to (240, 0).
    assertThat(start.distance(p(204, 72))).isLessThan(1e-6);
  }

  @Test
  void bendingAnEdgeKeepsItsFeatures() {
    Plan bent = new SlabEdit.BendEdge(BACK, Optional.of(p(120, 500))).applyTo(DRIVE);
    assertThat(at(bent, 2)).isEqualTo(at(DRIVE, 2));
  }

  @Test
  void featureThatReachesBeyondItsEdgeIsCutWhenItIsAdded() {
    Plan plan = new FeatureEdit.Add(BACK, Feature.of(FeatureKind.STEP, 230, 300)).applyTo(DRIVE);
    assertThat(at(plan, 2)).endsWith(Feature.of(FeatureKind.STEP, 230, 240));
  }

  @Test
  void takingTheFeatureOutLeavesWhatTheEdgeIsAgainst() {
    Plan plan = new FeatureEdit.Remove(BACK, 0).applyTo(DRIVE);
    assertThat(drive(plan).edge(2)).isEqualTo(EdgeSetting.against(Against.BUILDING));
    assertThatThrownBy(() -> new FeatureEdit.Remove(BACK, 1).applyTo(DRIVE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void edgeToBeLinedUpWithKeepsItsPlace() {
    Plan lined = new SlabEdit.SetPreference("drive", new Preference.LinedUpWith(2)).applyTo(DRIVE);
    Plan more =
        new SlabEdit.AddCorner(Ref.outline("drive", 1), Vertex.at(p(250, 240))).applyTo(lined);
    assertThat(drive(more).jointing().preference()).isEqualTo(new Preference.LinedUpWith(3));
    Plan fewer = new SlabEdit.RemoveCorner(Ref.outline("drive", 2)).applyTo(more);
    assertThat(drive(fewer).jointing().preference()).isEqualTo(new Preference.LinedUpWith(2));
    // Its own first corner taken out: the edge before carries on as the one that is meant.
    Plan own = new SlabEdit.RemoveCorner(Ref.outline("drive", 2)).applyTo(lined);
    assertThat(drive(own).jointing().preference()).isEqualTo(new Preference.LinedUpWith(1));
  }

  @Test
  void zonesMoveWithTheirSlabAndGoWithIt() {
    Outline strip = Outline.of(List.of(p(100, -10), p(110, -10), p(110, 490), p(100, 490)));
    Plan plan = new ZoneEdit.Add("drive", KeepClear.of("drain line", strip)).applyTo(DRIVE);
    Plan moved = new SlabEdit.MoveSlab("drive", p(5, 7)).applyTo(plan);
    assertThat(drive(moved).keepClear().getFirst().outline().vertices().getFirst().at())
        .isEqualTo(p(105, -3));
    assertThat(at(moved, 2)).isEqualTo(at(DRIVE, 2));
    assertThat(new ZoneEdit.Remove("drive", 0).applyTo(plan)).isEqualTo(DRIVE);
    assertThatThrownBy(() -> new ZoneEdit.Remove("drive", 0).applyTo(DRIVE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void featuresFitTheirEdgesAfterAnyChangeOfCorners() {
    for (long seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      Plan plan = DRIVE;
      for (int i = 0; i < 12; i++) {
        plan = anyChange(random, plan).applyTo(plan);
        Slab slab = drive(plan);
        int n = slab.outline().vertices().size();
        assertThat(slab.edges().keySet()).as("seed %d", seed).allMatch(k -> k >= 0 && k < n);
        for (var e : slab.edges().entrySet()) {
          double length = slab.outline().ring().edges().get(e.getKey()).length();
          for (Feature f : e.getValue().features()) {
            assertThat(f.to()).as("seed %d, step %d", seed, i).isLessThanOrEqualTo(length + 1e-9);
          }
        }
      }
    }
  }

  private static Edit anyChange(Random random, Plan plan) {
    int n = drive(plan).outline().vertices().size();
    Ref ref = Ref.outline("drive", random.nextInt(n));
    Point at = p(random.nextInt(400), random.nextInt(600));
    return switch (random.nextInt(4)) {
      case 0 -> new SlabEdit.MoveCorner(ref, at);
      case 1 -> new SlabEdit.AddCorner(ref, Vertex.at(at));
      case 2 -> n > 3 ? new SlabEdit.RemoveCorner(ref) : new SlabEdit.MoveCorner(ref, at);
      default -> new FeatureEdit.Add(ref, Feature.of(FeatureKind.OTHER, random.nextInt(60), 90));
    };
  }
}
