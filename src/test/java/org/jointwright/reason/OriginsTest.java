package org.jointwright.reason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.check.Sketch;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Source;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Hand-made slabs of which it is plain where each joint comes from; inches. */
class OriginsTest {
  private static List<Origin> of(Plan plan, String slab, String joint) {
    return Reasons.of(plan, Layouts.of(plan), slab, List.of(joint)).getFirst().origins();
  }

  private static List<Origin> of(Sketch sketch, String joint) {
    return of(sketch.plan(), "slab", joint);
  }

  private static <T extends Origin> T only(List<Origin> all, Class<T> kind) {
    List<T> found = all.stream().filter(kind::isInstance).map(kind::cast).toList();
    assertThat(found).as("%s among %s", kind.getSimpleName(), all).hasSize(1);
    return found.getFirst();
  }

  private static boolean has(List<Origin> all, Class<? extends Origin> kind) {
    return all.stream().anyMatch(kind::isInstance);
  }

  /** An L with its inside corner at (100, 100): D, the fourth letter. */
  private static Sketch ell() {
    return Sketch.polygon(0, 0, 200, 0, 200, 100, 100, 100, 100, 200, 0, 200);
  }

  @Test
  void aJointFromAnInsideCornerNamesTheCorner() {
    Origin.InsideCorner o =
        only(of(ell().joint(0, 100, 100, 100), "J1"), Origin.InsideCorner.class);
    assertThat(o.where()).isEqualTo(Where.END);
    assertThat(o.at()).isEqualTo(new Point(100, 100));
    assertThat(o.letter()).contains("D");
    assertThat(o.of()).isEqualTo(new Source.OnOutline(3));
    assertThat(o.degrees()).isEqualTo(270);
  }

  @Test
  void aJointThatStandsBesideTheCornerDoesNotStartThere() {
    assertThat(has(of(ell().joint(0, 98, 100, 98), "J1"), Origin.InsideCorner.class)).isFalse();
  }

  @Test
  void aJointFromACornerOfAnOpeningNamesTheOpening() {
    Sketch sketch =
        Sketch.rectangle(200, 200).opening(90, 90, 110, 90, 110, 110, 90, 110).joint(0, 90, 90, 90);
    Origin.InsideCorner o = only(of(sketch, "J1"), Origin.InsideCorner.class);
    assertThat(o.of()).isEqualTo(new Source.OnOpening(0, 0));
    assertThat(o.letter()).contains("E");
  }

  private static Sketch withDrain() {
    return Sketch.rectangle(200, 200)
        .post(100, 100, 8)
        .boxOut(100, 88, 112, 100, 100, 112, 88, 100);
  }

  @Test
  void aJointFromABoxOutsCornerNamesTheObject() {
    List<Origin> found = of(withDrain().joint(0, 100, 88, 100), "J2");
    assertThat(only(found, Origin.BoxOutCorner.class).fixed()).isEqualTo("post");
    assertThat(has(found, Origin.BoxOutSide.class)).isFalse();
  }

  @Test
  void aJointOntoABoxOutsSideSaysSo() {
    List<Origin> found = of(withDrain().joint(0, 94, 94, 94), "J2");
    assertThat(only(found, Origin.BoxOutSide.class).where()).isEqualTo(Where.END);
    assertThat(has(found, Origin.BoxOutCorner.class)).isFalse();
  }

  @Test
  void theFillerOfABoxOutIsRoundTheObject() {
    assertThat(of(withDrain(), "J1")).containsExactly(new Origin.RoundObject(Where.ALONG, "post"));
  }

  @Test
  void fillerAlongAnEdgeNamesTheEdgeAndWhatItIsAgainst() {
    Sketch sketch = Sketch.rectangle(100, 100).edge(1, Against.BUILDING).filler(100, 0, 100, 100);
    assertThat(of(sketch, "J1"))
        .containsExactly(
            new Origin.AlongEdge(Where.ALONG, new Source.OnOutline(1), Against.BUILDING));
  }

  @Test
  void twoJointsDivideASlabInThreeEqualParts() {
    Sketch sketch = Sketch.rectangle(300, 100).joint(100, 0, 100, 100).joint(200, 0, 200, 100);
    Origin.Even first = only(of(sketch, "J1"), Origin.Even.class);
    assertThat(first.part()).isEqualTo(1);
    assertThat(first.of()).isEqualTo(3);
    assertThat(first.from()).isEqualTo(new Source.OnOutline(3));
    assertThat(first.to()).isEqualTo(new Source.OnOutline(1));
    assertThat(first.share()).isCloseTo(1.0 / 3, within(1e-12));
    assertThat(only(of(sketch, "J2"), Origin.Even.class).part()).isEqualTo(2);
  }

  @Test
  void aWholeInchMarkBesideTheExactThirdIsStillAnEvenPart() {
    Sketch sketch = Sketch.rectangle(301, 100).joint(100, 0, 100, 100).joint(201, 0, 201, 100);
    Origin.Even o = only(of(sketch, "J1"), Origin.Even.class);
    assertThat(o.of()).isEqualTo(3);
    assertThat(o.share()).isCloseTo(100.0 / 301, within(1e-12));
  }

  @Test
  void jointsMoreThanAnInchOffAreNoEvenParts() {
    Sketch sketch = Sketch.rectangle(300, 100).joint(97, 0, 97, 100).joint(200, 0, 200, 100);
    List<Origin> found = of(sketch, "J1");
    assertThat(has(found, Origin.Even.class)).isFalse();
    Origin.Between o = only(found, Origin.Between.class);
    assertThat(o.before()).isEqualTo(97);
    assertThat(o.after()).isEqualTo(103);
  }

  @Test
  void evenPartsAreCountedFromTheLineThatAnInsideCornerHolds() {
    Sketch sketch = ell().joint(0, 100, 100, 100).joint(0, 50, 200, 50).joint(0, 150, 100, 150);
    Origin.Even low = only(of(sketch, "J2"), Origin.Even.class);
    assertThat(low.of()).isEqualTo(2);
    assertThat(low.whole()).as("not the whole slab of 200").isEqualTo(100);
    assertThat(List.of(low.from(), low.to())).contains(new Source.OnOutline(0));
  }

  @Test
  void jointsInOneLineGoOnFromEachOther() {
    Sketch sketch = Sketch.rectangle(200, 100).joint(0, 50, 100, 50).joint(200, 50, 100, 50);
    assertThat(only(of(sketch, "J1"), Origin.GoesOn.class))
        .isEqualTo(new Origin.GoesOn(Where.END, "J2", 0));
    assertThat(only(of(sketch, "J2"), Origin.GoesOn.class))
        .isEqualTo(new Origin.GoesOn(Where.END, "J1", 0));
  }

  @Test
  void aJointThatStopsAtAnotherEndsOnIt() {
    Sketch sketch = Sketch.rectangle(200, 100).joint(0, 50, 200, 50).joint(80, 0, 80, 50);
    assertThat(only(of(sketch, "J2"), Origin.EndsOn.class))
        .isEqualTo(new Origin.EndsOn(Where.END, "J1"));
    assertThat(has(of(sketch, "J1"), Origin.EndsOn.class)).isFalse();
  }

  @Test
  void aWholeMarkNamesTheCornerTheTapeHooksOn() {
    List<Origin> found = of(Sketch.rectangle(200.5, 100).joint(61, 0, 60.5, 100), "J1");
    List<Origin> marks = found.stream().filter(o -> o instanceof Origin.WholeMark).toList();
    // The upper end stands half an inch off a whole one from D, and on a whole one from C.
    assertThat(marks)
        .containsExactly(
            new Origin.WholeMark(Where.START, "A", "A–B", 61),
            new Origin.WholeMark(Where.END, "C", "D–C", 140));
  }

  @Test
  void aLockedJointIsTheUsersWill() {
    Joint locked =
        Joint.of(
                "J1", JointKind.CONTRACTION, Path.straight(at(60, 0), at(60, 100)), Purpose.SPACING)
            .withLocked(true);
    assertThat(of(Sketch.rectangle(200, 100).add(locked), "J1").getFirst())
        .isEqualTo(new Origin.Locked(Where.ALONG));
  }

  @Test
  void aCornerJointCutsOffTheTip() {
    Sketch sketch = Sketch.polygon(0, 0, 240, 0, 0, 120).cornerJoint(223.9, 8.05, 222, 0);
    assertThat(only(of(sketch, "J1"), Origin.CornerTip.class).letter()).contains("B");
  }

  @Test
  void aJointAlongTheRadiusOfACurveDividesTheCurve() {
    double deep = 100 * Math.sqrt(0.5);
    // A quarter of a ring between the radii 100 and 200.
    Sketch sketch =
        Sketch.of(
                Vertex.at(at(100, 0)),
                Vertex.arc(at(200, 0), at(2 * deep, 2 * deep)),
                Vertex.at(at(0, 200)),
                Vertex.arc(at(0, 100), at(deep, deep)))
            .joint(deep, deep, 2 * deep, 2 * deep);
    List<Origin> found = of(sketch, "J1");
    assertThat(found.stream().filter(o -> o instanceof Origin.Radial)).hasSize(2);
    Origin.Even even = only(found, Origin.Even.class);
    assertThat(even.of()).isEqualTo(2);
    assertThat(even.share()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void aJointAtTheEndOfAFlareStartsWhereTheArcBegins() {
    Sketch sketch =
        Sketch.of(
                Vertex.at(at(0, 0)),
                Vertex.at(at(200, 0)),
                Vertex.arc(at(200, 40), at(206, 66)),
                Vertex.at(at(230, 100)),
                Vertex.at(at(0, 100)))
            .joint(0, 40, 200, 40);
    assertThat(only(of(sketch, "J1"), Origin.EndOfArc.class).at()).isEqualTo(at(200, 40));
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }

  private static Slab box(String id, double x, Joint... joints) {
    Outline outline = Outline.of(List.of(at(x, 0), at(x + 100, 0), at(x + 100, 100), at(x, 100)));
    return Slab.of(id, outline).withLaid(List.of(joints), List.of());
  }

  private static Joint joint(String id, JointKind kind, double... xy) {
    return Joint.of(id, kind, Path.straight(at(xy[0], xy[1]), at(xy[2], xy[3])), Purpose.SPACING);
  }

  @Test
  void jointsOfTwoSlabsMeetAcrossTheEdgeBetweenThem() {
    Slab left =
        box(
            "left",
            0,
            joint("J1", JointKind.CONTRACTION, 0, 40, 100, 40),
            joint("J2", JointKind.CONSTRUCTION, 100, 0, 100, 100));
    Slab right = box("right", 100, joint("J1", JointKind.CONTRACTION, 100, 40.9, 200, 40.9));
    Plan plan = Plan.EMPTY.withSlabs(List.of(left, right));
    assertThat(only(of(plan, "right", "J1"), Origin.NeighbourJoint.class))
        .isEqualTo(new Origin.NeighbourJoint(Where.START, "left", "J1"));
    assertThat(of(plan, "left", "J2")).containsExactly(new Origin.SlabsMeet(Where.ALONG, "right"));
    Slab held = right.withEdges(Map.of(3, EdgeSetting.against(Against.CONCRETE)));
    Plan filled = Plan.EMPTY.withSlabs(List.of(left, held));
    assertThat(has(of(filled, "right", "J1"), Origin.NeighbourJoint.class))
        .as("filler parts them")
        .isFalse();
  }

  @Test
  void aJointMeetsTheSideOfAGarageDoorAndAnOldJoint() {
    EdgeSetting door =
        EdgeSetting.OPEN.withFeatures(List.of(Feature.of(FeatureKind.GARAGE_DOOR, 20, 80)));
    Slab slab = box("slab", 0, joint("J1", JointKind.CONTRACTION, 20, 0, 20, 100));
    Plan plan =
        Plan.EMPTY
            .withSlabs(List.of(slab.withEdges(Map.of(0, door))))
            .withGiven(List.of(GivenJoint.of(Path.straight(at(20.5, 100), at(20.5, 300)))));
    List<Origin> found = of(plan, "slab", "J1");
    assertThat(only(found, Origin.FeatureEnd.class))
        .isEqualTo(
            new Origin.FeatureEnd(
                Where.START, new Source.OnOutline(0), FeatureKind.GARAGE_DOOR, 0, true));
    assertThat(only(found, Origin.GivenJointEnd.class).where()).isEqualTo(Where.END);
  }

  @Test
  void aConstructionJointInASlabWhosePourIsLimitedEndsThePour() {
    Slab slab = box("slab", 0, joint("J1", JointKind.CONSTRUCTION, 50, 0, 50, 100));
    Pour pour = new Pour(Optional.empty(), Optional.of(Length.inches(60)), Kept.NOTHING);
    Plan limited = Plan.EMPTY.withSlabs(List.of(slab)).withPour(pour);
    Origin.PourEnds ends = only(of(limited, "slab", "J1"), Origin.PourEnds.class);
    assertThat(ends.volume()).isEmpty();
    assertThat(ends.width()).contains(Length.inches(100));
    Plan free = Plan.EMPTY.withSlabs(List.of(slab));
    assertThat(has(of(free, "slab", "J1"), Origin.PourEnds.class)).isFalse();
  }

  @Test
  void aPourThatEndsSaysWhichLimitItWouldGoBeyond() {
    Slab slab = box("slab", 0, joint("J1", JointKind.CONSTRUCTION, 50, 0, 50, 100));
    Volume all = Volume.under(new Area(100 * 100), slab.thickness());
    for (boolean over : new boolean[] {true, false}) {
      Volume most = new Volume(all.cubicInches() * (over ? 0.99 : 1.01));
      Plan plan =
          Plan.EMPTY
              .withSlabs(List.of(slab))
              .withPour(new Pour(Optional.of(most), Optional.of(Length.inches(100)), Kept.NOTHING));
      Origin.PourEnds ends = only(of(plan, "slab", "J1"), Origin.PourEnds.class);
      assertThat(ends.volume().isPresent()).isEqualTo(over);
      assertThat(ends.width()).as("as wide as the board reaches").isEmpty();
    }
    Pour both =
        new Pour(
            Optional.of(new Volume(all.cubicInches() / 2)),
            Optional.of(Length.inches(50)),
            Kept.NOTHING);
    Plan plan = Plan.EMPTY.withSlabs(List.of(slab)).withPour(both);
    Origin.PourEnds ends = only(of(plan, "slab", "J1"), Origin.PourEnds.class);
    assertThat(ends.volume()).isPresent();
    assertThat(ends.width()).isPresent();
  }
}
