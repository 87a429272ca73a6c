package org.jointwright.fix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jointwright.check.Finding;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Meeting;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What lies over another slab is moved off it or cut off there. */
class OffOtherTest {
  private static Slab slab(String id, double x1, double y1, double x2, double y2) {
    return Slab.of(
        id,
        Outline.of(
            List.of(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2))));
  }

  private static Slab circle(String id, double x, double y, double radius) {
    return Slab.of(
        id,
        new Outline(
            List.of(
                Vertex.arc(new Point(x - radius, y), new Point(x, y - radius)),
                Vertex.arc(new Point(x + radius, y), new Point(x, y + radius)))));
  }

  private static Plan plan(Slab... slabs) {
    return Plan.EMPTY.withSlabs(List.of(slabs));
  }

  private static List<Fix> fixes(Plan plan) {
    return fixes(plan, Layouts.of(plan));
  }

  private static List<Fix> fixes(Plan plan, Layout layout) {
    return Fixes.of(plan, layout, finding(plan));
  }

  /** How far the first move offered goes, inches; 0 where none is offered. */
  private static double move(Plan plan) {
    return fixes(plan).stream()
        .filter(f -> f.key().endsWith("move"))
        .findFirst()
        .map(f -> ((Length) f.arguments().get(1)).inches())
        .orElse(0.0);
  }

  private static Finding finding(Plan plan) {
    return found(plan).getFirst();
  }

  private static List<Finding> found(Plan plan) {
    return Checks.judge(Layouts.of(plan)).findings().stream()
        .filter(f -> f.rule().equals("M11"))
        .toList();
  }

  @Test
  void aWalkAFootOverThePatioIsMovedBackOrCutOffAndTouchesThen() {
    Plan plan =
        Plan.EMPTY.withSlabs(List.of(slab("patio", 0, 0, 96, 96), slab("walk", 30, -60, 72, 12)));
    List<Fix> fixes = fixes(plan);
    assertThat(fixes).extracting(Fix::key).contains("fix.apart.move", "fix.apart.cut");
    for (Fix fix : fixes) {
      assertThat(fix.isOfShape()).isTrue();
      Plan after = fix.edit().applyTo(plan);
      assertThat(found(after)).isEmpty();
      assertThat(after.slabs()).hasSize(2);
      assertThat(Meeting.of(after)).as(fix.key()).hasSize(1);
    }
    Fix move = fixes.stream().filter(f -> f.key().endsWith("move")).findFirst().orElseThrow();
    Plan moved = move.edit().applyTo(plan);
    assertThat(moved.slab("walk").orElseThrow().outline().ring().box().maxY())
        .isCloseTo(0, within(1e-6));
    assertThat(moved.slab("walk").orElseThrow().region().area()).isCloseTo(42 * 72, within(1e-6));
  }

  @Test
  void aCornerOverAnotherIsMovedTheShorterWayFirst() {
    Plan plan =
        Plan.EMPTY.withSlabs(List.of(slab("patio", 0, 0, 96, 96), slab("pad", 90, 80, 150, 140)));
    Plan moved = fixes(plan).getFirst().edit().applyTo(plan);
    assertThat(moved.slab("pad").orElseThrow().outline().ring().box().minX())
        .isCloseTo(96, within(1e-6));
  }

  @Test
  void whatCannotBeMovedOffWithoutLyingOverAThirdIsOnlyCut() {
    Plan plan =
        Plan.EMPTY.withSlabs(
            List.of(
                slab("patio", 0, 0, 96, 96),
                slab("drive", 0, -156, 96, -60),
                slab("walk", 30, -60, 72, 12)));
    assertThat(fixes(plan)).extracting(Fix::key).containsOnly("fix.apart.cut");
  }

  @Test
  void howJointsStandBeforeTheyAreLaidAnewKeepsNoMoveBack() {
    Plan plan = plan(slab("one", 0, 0, 120, 120), slab("two", 100, 0, 220, 120));
    // A joint along what is the rim of both once they are apart.
    Joint joint =
        Joint.of(
            "J1",
            JointKind.CONTRACTION,
            Path.straight(new Point(0, 119), new Point(120, 119)),
            Purpose.SPACING);
    Plan laid = plan.withSlab("one", s -> s.withLaid(List.of(joint), List.of()));
    assertThat(fixes(plan, Layouts.of(laid)))
        .first()
        .extracting(Fix::key)
        .isEqualTo("fix.apart.move");
    assertThat(move(plan)).isCloseTo(20, within(1e-6));
  }

  @Test
  void aRoundSlabIsMovedOffAStraightOneAndTheOtherWayAbout() {
    assertThat(move(plan(slab("patio", 0, 0, 240, 240), circle("round", 300, 120, 72))))
        .isCloseTo(12, within(0.02));
    assertThat(move(plan(circle("round", 0, 0, 120), slab("walk", 100, -24, 340, 24))))
        .isCloseTo(20, within(0.02));
    assertThat(move(plan(circle("round", 0, 0, 120), circle("small", 160, 0, 60))))
        .isCloseTo(20, within(0.05));
  }

  @Test
  void outOfAnInsideCornerItIsMovedOffBothSides() {
    Slab bent =
        Slab.of(
            "patio",
            Outline.of(
                List.of(
                    new Point(0, 0),
                    new Point(300, 0),
                    new Point(300, 120),
                    new Point(120, 120),
                    new Point(120, 300),
                    new Point(0, 300))));
    Plan plan = plan(bent, slab("walk", 110, 112, 200, 160));
    Plan moved = fixes(plan).getFirst().edit().applyTo(plan);
    assertThat(moved.slab("walk").orElseThrow().outline().ring().box())
        .isEqualTo(new Box(120, 120, 210, 168));
  }

  @Test
  void aSlabWhollyAmidAnotherIsGivenRoomInItOrMovedOutOfIt() {
    Plan plan = plan(slab("patio", 0, 0, 240, 240), slab("pad", 100, 90, 160, 150));
    assertThat(fixes(plan)).extracting(Fix::key).startsWith("fix.apart.room", "fix.apart.move");
    Fix room = fixes(plan).getFirst();
    assertThat(room.isOfShape()).isTrue();
    Plan after = room.edit().applyTo(plan);
    assertThat(after.slab("patio").orElseThrow().region().area())
        .isCloseTo(240 * 240 - 60 * 60, within(1e-6));
    assertThat(found(after)).isEmpty();
    assertThat(after.slab("patio").orElseThrow().openings().getFirst().edges().values())
        .as("filler is asked all round it")
        .hasSize(4)
        .allMatch(EdgeSetting::needsIsolation);
    assertThat(move(plan)).isCloseTo(140, within(1e-6));
  }

  @Test
  void whatComesToTheRimOfAnotherOrLiesOnItsOpeningIsGivenNoRoom() {
    Slab patio = slab("patio", 0, 0, 240, 240);
    assertThat(fixes(plan(patio, slab("pad", 0.4, 90, 36, 150))))
        .extracting(Fix::key)
        .doesNotContain("fix.apart.room")
        .contains("fix.apart.move");
    assertThat(fixes(plan(patio, slab("pad", 0.6, 90, 36, 150))))
        .extracting(Fix::key)
        .contains("fix.apart.room");
    Opening well = new Opening(slab("x", 110, 100, 120, 110).outline(), Map.of(), Kept.NOTHING);
    assertThat(fixes(plan(patio.withOpenings(List.of(well)), slab("pad", 100, 90, 160, 150))))
        .extracting(Fix::key)
        .doesNotContain("fix.apart.room");
  }

  @Test
  void ofAWalkRightAcrossBothEndsStay() {
    Plan plan = plan(slab("patio", 0, 0, 240, 240), slab("walk", 96, -60, 132, 300));
    Fix cut = fixes(plan).getFirst();
    assertThat(cut.key()).isEqualTo("fix.apart.cut");
    Plan after = cut.edit().applyTo(plan);
    assertThat(after.slabs()).extracting(Slab::id).hasSize(3).contains("patio", "walk");
    assertThat(after.slabs().stream().mapToDouble(s -> s.region().area()).sum())
        .isCloseTo(240 * 240 + 2 * 36 * 60, within(1e-6));
    assertThat(Meeting.of(after)).hasSize(2);
  }

  @Test
  void ofAPadMostlyOverAnotherTheRestStays() {
    Plan plan = plan(slab("patio", 0, 0, 240, 240), slab("pad", 60, 140, 120, 270));
    Plan after =
        fixes(plan).stream()
            .filter(f -> f.key().equals("fix.apart.cut"))
            .findFirst()
            .orElseThrow()
            .edit()
            .applyTo(plan);
    assertThat(after.slab("pad").orElseThrow().outline().ring().box())
        .isEqualTo(new Box(60, 240, 120, 270));
  }

  @Test
  void whatStandsAgainstTheStreetIsCutBeforeItIsMovedOffIt() {
    Slab patio = slab("patio", 0, 0, 240, 240);
    Slab walk = slab("walk", 60, -240, 108, 12);
    EdgeSetting street = EdgeSetting.against(Against.STREET);
    assertThat(fixes(plan(patio, walk))).extracting(Fix::key).startsWith("fix.apart.move");
    assertThat(fixes(plan(patio, walk.withEdges(Map.of(0, street)))))
        .extracting(Fix::key)
        .startsWith("fix.apart.cut");
    EdgeSetting wall = EdgeSetting.against(Against.BUILDING);
    assertThat(fixes(plan(patio, walk.withEdges(Map.of(3, wall)))))
        .as("along the wall it may go")
        .extracting(Fix::key)
        .startsWith("fix.apart.move");
    // So does a slab that touches another one there.
    assertThat(fixes(plan(patio, walk, slab("drive", -200, -480, 300, -240))))
        .extracting(Fix::key)
        .startsWith("fix.apart.cut");
  }

  @Test
  void aMoveFourTimesAsFarAsNeededIsNotOffered() {
    Slab patio = slab("patio", 0, 0, 96, 96);
    assertThat(fixes(plan(patio, slab("pad", 86, 57, 150, 140))))
        .filteredOn(f -> f.key().endsWith("move"))
        .hasSize(2);
    assertThat(fixes(plan(patio, slab("pad", 86, 55, 150, 140))))
        .filteredOn(f -> f.key().endsWith("move"))
        .hasSize(1);
  }
}
