package org.jointwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.file.PlanReading;
import org.jointwright.fix.Fix;
import org.jointwright.fix.Fixes;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Joints laid anew, or run through an object, where no small change helps. */
class RemediesTest {
  private static Plan broken(String name) {
    return plan(Path.of("src/test/resources/cases/broken").resolve(name + ".json"));
  }

  private static Plan plan(Path file) {
    return switch (PlanFiles.open(file)) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused -> throw new AssertionError(refused.problems());
    };
  }

  private static List<Fix> fixes(Answer answer, Finding finding) {
    return new Remedies(answer.asked(), answer.layout(), answer.judgement()).of(finding);
  }

  private static Finding first(Answer answer, String rule) {
    return answer.judgement().of(Severity.MUST).stream()
        .filter(f -> f.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBareSlabIsLaidAndNothingIsBrokenThen() {
    Answer bare = Answer.asItStands(broken("u-shape-without-joints"));
    List<Fix> fixes = fixes(bare, first(bare, "M3"));
    assertThat(fixes).singleElement().extracting(Fix::key).isEqualTo("fix.layAnew.slab");
    Answer after = Answer.asItStands(fixes.getFirst().edit().applyTo(bare.plan()));
    assertThat(after.judgement().of(Severity.MUST)).isEmpty();
  }

  @Test
  void aSmallChangeComesBeforeLayingAnew() {
    Answer answer = Answer.asItStands(broken("drive-without-its-middle-joint"));
    assertThat(fixes(answer, first(answer, "M1")))
        .isNotEmpty()
        .noneMatch(f -> f.key().startsWith("fix.layAnew"));
  }

  @Test
  void aLockedJointThatIsInTheWayIsSetFreeOnlyWhereItIsSaidSo() {
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(480, 0), new Point(480, 480), new Point(0, 480)));
    Joint across =
        Joint.of(
                "J1",
                JointKind.CONTRACTION,
                org.jointwright.shape.Path.straight(new Point(12, 0), new Point(12, 480)),
                Purpose.SPACING)
            .withLocked(true);
    Plan plan =
        Plan.EMPTY.withSlabs(
            List.of(Slab.of("slab", outline).withLaid(List.of(across), List.of())));
    Answer answer = Answer.asItStands(plan);
    List<Fix> fixes = fixes(answer, first(answer, "M5"));
    assertThat(fixes).singleElement().extracting(Fix::key).isEqualTo("fix.layAnew.unlocked");
    Answer after = Answer.asItStands(fixes.getFirst().edit().applyTo(plan));
    assertThat(after.judgement().of(Severity.MUST)).isEmpty();
  }

  /**
   * A drive with a flare, its cleanout 2 ft beside the line that its joints run on, as it was laid
   * once: a short joint, a slanted one and a scrap of a panel are round the cleanout.
   */
  private static Plan flared() {
    return plan(Path.of("src/test/resources/remedies/line-beside-a-cleanout.json"));
  }

  private static Finding tee(Answer answer) {
    return answer.judgement().of(Severity.SHOULD).stream()
        .filter(f -> f.at().distance(new Point(120, 144)) < 60)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aSearchThatIsStoppedFindsNothingAndIsBegunAnewTheNextTime() {
    Answer answer = Answer.asItStands(flared());
    Remedies remedies = new Remedies(answer.asked(), answer.layout(), answer.judgement());
    AtomicInteger asked = new AtomicInteger();
    assertThat(remedies.of(tee(answer), () -> asked.incrementAndGet() < 3)).isEmpty();
    assertThat(asked.get()).as("stopped soon after it was told").isLessThan(20);
    assertThat(remedies.of(tee(answer))).extracting(Fix::key).containsExactly("fix.throughObject");
  }

  /** Whatever is clicked: what is offered clears that very finding. */
  @Test
  void aLineIsRunThroughAnObjectOnlyWhereTheFindingGoes() {
    Answer answer = Answer.asItStands(flared());
    Remedies remedies = new Remedies(answer.asked(), answer.layout(), answer.judgement());
    int run = 0;
    for (Finding f : answer.judgement().of(Severity.SHOULD)) {
      for (Fix fix : remedies.of(f)) {
        if (fix.key().equals("fix.throughObject")) {
          run++;
          Answer after = Answer.asItStands(fix.edit().applyTo(answer.plan()));
          assertThat(Fixes.isGone(f, answer.layout(), after.layout(), after.judgement()))
              .as(f.key())
              .isTrue();
        }
      }
    }
    assertThat(run).isPositive();
  }

  @Test
  void aLineBesideAnObjectIsRunThroughItWhereNothingElseHelps() {
    Answer answer = Answer.asItStands(flared());
    Fix fix = fixes(answer, tee(answer)).getFirst();
    assertThat(fix.key()).isEqualTo("fix.throughObject");
    Answer after = Answer.asItStands(fix.edit().applyTo(answer.plan()));
    assertThat(after.judgement().of(Severity.MUST)).isEmpty();
    assertThat(after.findings()).hasSizeLessThan(answer.findings().size());
    assertThat(Fixes.isGone(tee(answer), answer.layout(), after.layout(), after.judgement()))
        .isTrue();
    assertThat(after.plan().slabs().getFirst().lockedJoints()).as("what was run").isNotEmpty();
  }

  private static Slab slab(String id, double x1, double y1, double x2, double y2) {
    return Slab.of(
        id,
        Outline.of(
            List.of(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2))));
  }

  /** What is offered for a pad that lies over a patio of 20 ft up to so far beyond its side. */
  private static List<Fix> offered(double beyond) {
    Plan plan =
        Plan.EMPTY.withSlabs(
            List.of(slab("patio", 0, 0, 240, 240), slab("pad", 190, 90, 240 + beyond, 140)));
    Answer laid = Answer.laid(plan);
    return fixes(laid, first(laid, "M11"));
  }

  @Test
  void whatChangesAShapeIsTriedWithItsJointsLaid() {
    assertThat(offered(6)).extracting(Fix::key).contains("fix.apart.move", "fix.apart.cut");
    assertThat(offered(4))
        .as("the strip that is left is too thin for any joints")
        .extracting(Fix::key)
        .contains("fix.apart.move")
        .doesNotContain("fix.apart.cut");
  }

  @Test
  void onceToldToStopItTriesNone() {
    Plan plan =
        Plan.EMPTY.withSlabs(
            List.of(slab("patio", 0, 0, 240, 240), slab("walk", 60, -200, 102, 12)));
    Answer laid = Answer.laid(plan);
    Remedies remedies = new Remedies(laid.asked(), laid.layout(), laid.judgement());
    assertThat(remedies.of(first(laid, "M11"), () -> false)).isEmpty();
  }

  @Test
  void aPadThatIsGivenRoomLeavesNothingToFind() {
    Plan plan =
        Plan.EMPTY.withSlabs(List.of(slab("patio", 0, 0, 240, 192), slab("pad", 96, 72, 144, 120)));
    Answer laid = Answer.laid(plan);
    Fix room = fixes(laid, first(laid, "M11")).getFirst();
    assertThat(room.key()).isEqualTo("fix.apart.room");
    assertThat(Answer.laid(room.edit().applyTo(plan)).findings()).isEmpty();
  }
}
