package org.jointwright.fix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What is offered first for plans that were broken on purpose, and for how many anything is. */
class FixesTest {
  private static final Path BROKEN = Path.of("src/test/resources/cases/broken");

  private static CasePlans broken(String name) {
    return CasePlans.in(BROKEN).stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Finding finding(CasePlans c, String rule) {
    return Checks.judge(c.asked(), c.layout()).findings().stream()
        .filter(f -> f.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  private static List<Fix> fixes(CasePlans c, String rule) {
    return Fixes.of(c.asked(), c.layout(), finding(c, rule));
  }

  private static List<String> said(CasePlans c, String rule) {
    Words words = Words.english(UnitSystem.of(c.layout().plan().unit()));
    return fixes(c, rule).stream().map(f -> words.say(f.key(), f.arguments().toArray())).toList();
  }

  private static Slab mended(CasePlans c, String rule) {
    Plan plan = fixes(c, rule).getFirst().edit().applyTo(c.layout().plan());
    assertThat(Checks.judge(Layouts.of(plan)).of(Severity.MUST)).isEmpty();
    return plan.slabs().getFirst();
  }

  private static void assertRuns(Joint joint, double x1, double y1, double x2, double y2) {
    Point from = new Point(12 * x1, 12 * y1);
    Point to = new Point(12 * x2, 12 * y2);
    Point start = joint.path().start();
    boolean forward = start.distance(from) <= start.distance(to);
    assertThat((forward ? from : to).distance(start)).isCloseTo(0, within(0.1));
    assertThat((forward ? to : from).distance(joint.path().end())).isCloseTo(0, within(0.1));
  }

  /**
   * A slab of 20 by 60 ft with five joints across, and a long one that leaves an inside corner at
   * {@code x} and slants by 15 in to the right, a little more than a degree.
   */
  private static CasePlans slanting(double x) {
    Outline outline =
        Outline.of(
            List.of(
                new Point(0, 0),
                new Point(240, 0),
                new Point(240, 720),
                new Point(x, 720),
                new Point(x, 708),
                new Point(0, 708)));
    List<Joint> joints = new ArrayList<>();
    joints.add(cut("J1", x, 708, x + 15, 0));
    for (int i = 1; i <= 5; i++) {
      joints.add(cut("J" + (i + 1), 0, 118 * i, 240, 118 * i));
    }
    Plan plan =
        Plan.EMPTY.withSlabs(
            List.of(
                Slab.of("lane", outline)
                    .withThickness(Length.inches(6))
                    .withLaid(joints, List.of())));
    return new CasePlans("slanting", plan, Layouts.of(plan));
  }

  private static Joint cut(String id, double x1, double y1, double x2, double y2) {
    return Joint.of(
        id,
        JointKind.CONTRACTION,
        org.jointwright.shape.Path.straight(new Point(x1, y1), new Point(x2, y2)),
        Purpose.SPACING);
  }

  /**
   * Turned straight about its corner the joint leaves panels of 90 and 150 in, which costs over 2
   * ft more by their unevenness, and nothing else is worse: the limit on cost alone forbids it. In
   * the middle the same turn costs nothing.
   */
  @Test
  void whatMakesTheJointsDearerIsNotOffered() {
    assertThat(fixes(slanting(120), "S10"))
        .extracting(Fix::key)
        .anyMatch(k -> k.startsWith("fix.turn"));
    assertThat(fixes(slanting(90), "S10")).isEmpty();
  }

  /** A joint from a corner may be so short that the corner is hard by both its ends. */
  @Test
  void aShortJointFromACornerIsNotTurnedToItsOwnCorner() {
    Outline flared =
        Outline.of(
            List.of(
                new Point(0, 0),
                new Point(120, 0),
                new Point(110, 8),
                new Point(110, 120),
                new Point(10, 120),
                new Point(10, 8)));
    Joint joint =
        Joint.of(
            "J1",
            JointKind.CONTRACTION,
            org.jointwright.shape.Path.straight(new Point(10, 8), new Point(10, 0)),
            Purpose.SPACING);
    Slab slab = Slab.of("drive", flared).withLaid(List.of(joint), List.of());
    Plan plan = Plan.EMPTY.withSlabs(List.of(slab));
    var layout = Layouts.of(plan);
    List<Finding> found = Checks.judge(layout).findings();
    assertThat(found).extracting(Finding::rule).contains("M4");
    assertThat(found)
        .allSatisfy(
            f -> assertThat(Fixes.of(plan, layout, f)).hasSizeLessThanOrEqualTo(Fixes.MOST));
  }

  /** A line snapped right across an opening ends at the near side of it, or goes on behind it. */
  @Test
  void aJointThroughAnOpeningIsNotCutBackToItsFarSide() {
    Outline opening =
        Outline.of(
            List.of(
                new Point(100, 90), new Point(140, 90), new Point(140, 110), new Point(100, 110)));
    Outline pad =
        Outline.of(
            List.of(new Point(0, 0), new Point(240, 0), new Point(240, 200), new Point(0, 200)));
    Joint joint =
        Joint.of(
                "J1",
                JointKind.CONTRACTION,
                org.jointwright.shape.Path.straight(new Point(120, 0), new Point(120, 200)),
                Purpose.SPACING)
            .withLocked(true);
    Slab slab =
        Slab.of("pad", pad)
            .withOpenings(List.of(new Opening(opening, Map.of(), Kept.NOTHING)))
            .withLaid(List.of(joint), List.of());
    Plan plan = Plan.EMPTY.withSlabs(List.of(slab));
    var layout = Layouts.of(plan);
    Finding finding =
        Checks.judge(layout).findings().stream()
            .filter(f -> f.rule().equals("M6"))
            .findFirst()
            .orElseThrow();
    List<Fix> fixes = Fixes.of(plan, layout, finding);
    assertThat(fixes).extracting(Fix::key).contains("fix.goOnBehind");
    for (Fix fix : fixes) {
      Plan mended = fix.edit().applyTo(plan);
      assertThat(Checks.judge(Layouts.of(mended)).findings())
          .as(fix.key())
          .noneMatch(f -> f.rule().equals("M6"));
      if (fix.key().equals("fix.goOnBehind")) {
        List<Joint> joints = mended.slabs().getFirst().joints();
        assertRuns(joints.get(0), 10, 0, 10, 7.5);
        assertRuns(joints.get(1), 10, 110 / 12.0, 10, 200 / 12.0);
      }
    }
  }

  /** S1: straight on it would meet the edge too flat; turned square to it, it catches the crack. */
  @Test
  void aTeeIsGoneOnFromSquareToWhatLiesBeyond() {
    CasePlans c = broken("tee-at-a-sharp-angle");
    assertThat(said(c, "S1"))
        .containsExactly("Go on from the end of joint J5 with a joint to side A–B.");
    Fix fix = fixes(c, "S1").getFirst();
    Slab slab = fix.edit().applyTo(c.layout().plan()).slabs().getFirst();
    Joint added = slab.joints().getLast();
    assertThat(added.path().start().distance(finding(c, "S1").at())).isLessThan(0.1);
    assertThat(added.path().edges().getFirst().direction(0).x()).isCloseTo(0, within(1e-6));
    assertThat(added.locked()).as("what a hand laid stays").isTrue();
  }

  @Test
  void aMissingJointIsPutAcrossBothPanelsSoThatItMakesNoTee() {
    CasePlans c = broken("drive-without-its-middle-joint");
    assertThat(said(c, "M1").getFirst())
        .isEqualTo("Add a joint across panel P3, at 20′-0″ on side B–C.");
    Slab slab = mended(c, "M1");
    Joint added = slab.joints().getLast();
    assertRuns(added, 0, 20, 20, 20);
    assertThat(added.locked()).as("what a hand laid stays").isTrue();
  }

  @Test
  void noFixRunsAJointThroughAZoneThatIsKeptClear() {
    CasePlans c = broken("drive-without-its-middle-joint");
    String slab = c.layout().plan().slabs().getFirst().id();
    KeepClear zone =
        KeepClear.of(
            "drain line",
            Outline.of(
                List.of(
                    new Point(12, 228),
                    new Point(96, 228),
                    new Point(96, 252),
                    new Point(12, 252))));
    Plan plan = c.layout().plan().withSlab(slab, s -> s.withKeepClear(List.of(zone)));
    CasePlans made = new CasePlans("zone", plan, Layouts.of(plan));
    assertThat(said(made, "M1")).isNotEqualTo(said(c, "M1"));
    for (Fix fix : fixes(made, "M1")) {
      assertThat(Checks.judge(Layouts.of(fix.edit().applyTo(plan))).findings())
          .noneMatch(f -> f.rule().equals("M10"));
    }
  }

  @Test
  void aJointOffCentreIsMovedWithAllThatMeetsIt() {
    CasePlans c = broken("drive-with-its-long-joint-off-centre");
    assertThat(said(c, "M1").getFirst())
        .isEqualTo("Move joint J1 by 3′-6″, to 10′-0″ on side A–B.");
    assertRuns(mended(c, "M1").joints().getFirst(), 10, 0, 10, 40);
  }

  @Test
  void aMetricPlanHasItsMarksAtWholeCentimetres() {
    CasePlans c = broken("metric-slab-with-an-uneven-joint");
    assertThat(said(c, "M1")).contains("Move joint J2 by 585 mm, to 3.750 m on side A–D.");
  }

  @Test
  void aSlantedJointIsTurnedSquare() {
    CasePlans c = broken("slanting-cross-joint");
    assertThat(said(c, "M4")).containsExactly("Turn joint J3 squarer to what it meets.");
  }

  @Test
  void aStripIsRidOfTheJointThatMakesIt() {
    assertThat(said(broken("sliver-along-the-side"), "M5")).contains("Take joint J3 out.");
  }

  @Test
  void aJointThatEndsShortRunsOnToTheEdge() {
    CasePlans c = broken("joint-short-of-the-edge");
    assertThat(said(c, "M6").getFirst()).isEqualTo("Run joint J2 on to side B–C.");
    assertThat(said(c, "M1").getFirst())
        .as("for the panel that it leaves open too")
        .isEqualTo("Run joint J2 on to side B–C.");
    mended(c, "M1");
  }

  @Test
  void aJointOffTheSlabIsCutBackToItsEdge() {
    CasePlans c = broken("joint-off-the-slab");
    assertThat(said(c, "M6").getFirst()).isEqualTo("Cut joint J4 back to side A–D.");
    mended(c, "M6");
  }

  @Test
  void aBareWallGetsFillerAndOnlyThenTheWordThatTheSlabLiesLoose() {
    CasePlans c = broken("house-wall-without-filler");
    assertThat(said(c, "M7"))
        .containsExactly(
            "Set filler all along side A–B.",
            "Say that the slab lies loose along side A–B, if it sticks to nothing there: no filler"
                + " then.");
    assertThat(mended(c, "M7").joints()).anyMatch(j -> j.kind() == JointKind.ISOLATION);
  }

  @Test
  void aColumnAtTheEdgeIsBoxedOutByATriangleWhoseCornerMeetsAJoint() {
    CasePlans c = broken("column-at-the-edge-without-a-box-out");
    Slab slab = mended(c, "M7");
    assertThat(slab.boxOuts()).singleElement();
    assertThat(slab.boxOuts().getFirst().outline().vertices()).hasSize(3);
  }

  @Test
  void aLockedJointIsPutBack() {
    CasePlans c = broken("locked-joint-moved");
    Plan plan = fixes(c, "M9").getFirst().edit().applyTo(c.layout().plan());
    assertThat(Checks.judge(c.asked(), Layouts.of(plan)).findings())
        .noneMatch(f -> f.rule().equals("M9"));
  }

  @Test
  void aShallowJointIsCutAsDeepAsTheSlabAsks() {
    CasePlans c = broken("joint-a-hair-short-of-the-edge");
    Plan shallow =
        c.layout()
            .plan()
            .withSlab(
                "slab",
                s -> s.withLaid(s.joints().stream().map(FixesTest::shallow).toList(), s.boxOuts()));
    CasePlans made = new CasePlans("shallow", shallow, Layouts.of(shallow));
    assertThat(said(made, "S9")).containsExactly("Cut joint J1 1″ deep.");
  }

  private static Joint shallow(Joint j) {
    return new Joint(
        j.id(),
        j.kind(),
        j.path(),
        j.locked(),
        j.purpose(),
        j.how(),
        java.util.Optional.of(Length.inches(0.75)),
        j.width(),
        j.kept());
  }

  @Test
  void mostOfWhatWasBrokenOnPurposeHasAFix() {
    Map<String, List<Boolean>> byRule = new TreeMap<>();
    for (CasePlans c : CasePlans.in(BROKEN)) {
      for (Finding f : Checks.judge(c.asked(), c.layout()).of(Severity.MUST)) {
        byRule
            .computeIfAbsent(f.rule(), r -> new ArrayList<>())
            .add(!Fixes.of(c.asked(), c.layout(), f).isEmpty());
      }
    }
    Map<String, Double> share = new TreeMap<>();
    byRule.forEach(
        (rule, has) -> share.put(rule, has.stream().filter(b -> b).count() / (double) has.size()));
    // What has none wants several joints at once: bare slabs, rings, one spacing for all panels.
    Map<String, Double> least =
        Map.of(
            "M1", 0.7, "M2", 0.9, "M3", 0.6, "M4", 1.0, "M5", 1.0, "M6", 1.0, "M7", 1.0, "M8", 0.25,
            "M9", 1.0);
    assertThat(share.keySet()).isEqualTo(new java.util.TreeSet<>(least.keySet()));
    least.forEach((rule, s) -> assertThat(share.get(rule)).as(rule).isGreaterThanOrEqualTo(s));
  }
}
