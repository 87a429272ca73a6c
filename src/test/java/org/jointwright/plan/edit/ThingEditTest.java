package org.jointwright.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class ThingEditTest {
  private static final Thing DRIVE = new Thing.WholeSlab("drive 1");

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Outline box(double x, double y, double wide, double high) {
    return Outline.of(List.of(p(x, y), p(x + wide, y), p(x + wide, y + high), p(x, y + high)));
  }

  private static FixedObject post(String id, double x, double y) {
    return new FixedObject(
        id,
        "drive 1",
        FixedKind.POST,
        new FixedShape.Round(p(x, y), Length.inches(8), Kept.NOTHING),
        Kept.NOTHING);
  }

  /** A drive with a door on its back edge, which runs from right to left, and all else in it. */
  private static Plan plan() {
    EdgeSetting house =
        EdgeSetting.against(Against.BUILDING)
            .withFeatures(List.of(Feature.of(FeatureKind.GARAGE_DOOR, 24, 144)));
    Joint joint =
        Joint.of(
            "J1", JointKind.CONTRACTION, Path.straight(p(0, 100), p(240, 100)), Purpose.SPACING);
    Slab drive =
        Slab.of("drive 1", box(0, 0, 240, 360))
            .withEdges(Map.of(2, house))
            .withJointing(Jointing.DEFAULT.withPreference(new Preference.LinedUpWith(1)))
            .withOpenings(
                List.of(
                    new Opening(box(30, 30, 24, 24), Map.of(), Kept.NOTHING),
                    new Opening(box(90, 30, 24, 24), Map.of(), Kept.NOTHING)))
            .withKeepClear(List.of(KeepClear.of("sewer", box(150, 200, 30, 30))))
            .withLaid(List.of(joint.withLocked(true)), List.of());
    return Plan.EMPTY
        .withSlabs(List.of(drive))
        .withFixed(List.of(post("post 1", 60, 300)))
        .withGiven(List.of(GivenJoint.of(Path.straight(p(240, 90), p(400, 90)))));
  }

  private static Slab drive(Plan plan) {
    return plan.slabs().getFirst();
  }

  @Test
  void movingASlabIsTheSameAsBefore() {
    assertThat(new ThingEdit.Put(List.of(DRIVE), Motion.by(p(12, -7))).applyTo(plan()))
        .isEqualTo(new SlabEdit.MoveSlab("drive 1", p(12, -7)).applyTo(plan()));
  }

  @Test
  void inAMirrorTheDoorStaysAtTheSamePlaceOfTheHouse() {
    Motion motion = Motion.mirror(new Mirror(p(120, 0), p(0, 1)));
    Plan mirrored = new ThingEdit.Put(List.of(DRIVE), motion).applyTo(plan());
    Slab drive = drive(mirrored);
    assertThat(drive.outline().ring().signedArea()).isEqualTo(240 * 360);
    // Counter-clockwise from the image of the first corner: the back edge is the second now.
    assertThat(drive.outline().ring().vertices())
        .containsExactly(p(240, 0), p(240, 360), p(0, 360), p(0, 0));
    assertThat(drive.edge(1).against()).isEqualTo(Against.BUILDING);
    // It stood from x = 96 to x = 216, and so stands from 24 to 144.
    Feature door = drive.edge(1).features().getFirst();
    assertThat(240 - door.from()).isEqualTo(144);
    assertThat(240 - door.to()).isEqualTo(24);
    assertThat(drive.openings().getFirst().outline().ring().box().maxX()).isEqualTo(210);
    assertThat(drive.joints().getFirst().path().start()).isEqualTo(p(240, 100));
    assertThat(mirrored.fixed().getFirst().shape().ring().box().centre().x())
        .isCloseTo(180, within(1e-9));
    // The right edge, number 1, is the left one now, number 2.
    assertThat(drive.jointing().preference()).isEqualTo(new Preference.LinedUpWith(2));
    assertThat(new ThingEdit.Put(List.of(DRIVE), motion).applyTo(mirrored)).isEqualTo(plan());
  }

  @Test
  void fourQuarterTurnsComeBack() {
    Motion quarter = Motion.turn(p(240, 0), 90);
    Plan plan = plan();
    for (int i = 0; i < 4; i++) {
      plan = new ThingEdit.Put(List.of(DRIVE), quarter).applyTo(plan);
    }
    assertThat(drive(plan).outline()).isEqualTo(drive(plan()).outline());
    assertThat(drive(plan).edges()).isEqualTo(drive(plan()).edges());
  }

  @Test
  void whatIsInASlabGoesWithItOnce() {
    Plan moved =
        new ThingEdit.Put(
                List.of(new Thing.Fixed("post 1"), DRIVE, new Thing.AnOpening("drive 1", 0)),
                Motion.by(p(10, 0)))
            .applyTo(plan());
    assertThat(moved)
        .isEqualTo(new ThingEdit.Put(List.of(DRIVE), Motion.by(p(10, 0))).applyTo(plan()));
  }

  @Test
  void copiesGetNamesOfTheirOwnAndKeepWhatIsKnown() {
    ThingEdit.Copy copy = new ThingEdit.Copy(List.of(DRIVE), Motion.by(p(300, 0)));
    Plan copied = copy.applyTo(plan());
    assertThat(copied.slabs()).extracting(Slab::id).containsExactly("drive 1", "drive 2");
    assertThat(copied.slabs().getLast().edges()).isEqualTo(drive(plan()).edges());
    assertThat(copied.fixed()).extracting(FixedObject::id).containsExactly("post 1", "post 2");
    assertThat(copied.fixed().getLast().slab()).isEqualTo("drive 2");
    assertThat(copy.made(plan())).containsExactly(new Thing.WholeSlab("drive 2"));
    assertThat(copy.made(copied)).containsExactly(new Thing.WholeSlab("drive 3"));
    List<Thing> rest =
        List.of(
            new Thing.AnOpening("drive 1", 1),
            new Thing.Zone("drive 1", 0),
            new Thing.Given(0),
            new Thing.Fixed("post 1"));
    assertThat(new ThingEdit.Copy(rest, Motion.by(p(0, 40))).made(plan()))
        .containsExactly(
            new Thing.AnOpening("drive 1", 2),
            new Thing.Zone("drive 1", 1),
            new Thing.Given(1),
            new Thing.Fixed("post 2"));
  }

  @Test
  void severalAreTakenOutWhateverTheirNumbers() {
    List<Thing> both =
        List.of(new Thing.AnOpening("drive 1", 0), new Thing.AnOpening("drive 1", 1));
    assertThat(drive(new ThingEdit.TakeOut(both).applyTo(plan())).openings()).isEmpty();
    assertThat(
            drive(new ThingEdit.TakeOut(List.of(both.getFirst())).applyTo(plan()))
                .openings()
                .getFirst()
                .outline())
        .isEqualTo(box(90, 30, 24, 24));
    Plan without =
        new ThingEdit.TakeOut(List.of(DRIVE, new Thing.Fixed("post 1"), new Thing.Given(0)))
            .applyTo(plan());
    assertThat(without.slabs()).isEmpty();
    assertThat(without.fixed()).isEmpty();
    assertThat(without.given()).isEmpty();
  }

  @Test
  void aDragOfSeveralIsOneStep() {
    List<Thing> things = List.of(new Thing.Fixed("post 1"), new Thing.Zone("drive 1", 0));
    History history = History.opened(plan());
    for (int i = 0; i < 5; i++) {
      history = history.continued(new ThingEdit.Put(things, Motion.by(p(3, 1))));
    }
    assertThat(history.past()).hasSize(1);
    assertThat(history.now())
        .isEqualTo(new ThingEdit.Put(things, Motion.by(p(15, 5))).applyTo(plan()));
    assertThat(history.undone().now()).isEqualTo(plan());
  }
}
