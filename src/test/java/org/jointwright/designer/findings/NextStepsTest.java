package org.jointwright.designer.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.app.Answer;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.judge.Checks;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Offer;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.Wish;
import org.jointwright.fix.IfLeft;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.shape.Point;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What to go on with at a finding that no fix clears, and what comes of it if it stays. */
class NextStepsTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  /** A pad with a post in its middle, and joints that end on its box-out and on one another. */
  private static Plan plan() {
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(240, 0), new Point(240, 192), new Point(0, 192)));
    FixedShape shape = new FixedShape.Round(new Point(100, 100), Length.inches(8), Kept.NOTHING);
    return Plan.EMPTY
        .withSlabs(List.of(Slab.of("pad", outline)))
        .withFixed(List.of(new FixedObject("post", "pad", FixedKind.POST, shape, Kept.NOTHING)));
  }

  private static Desk answered(Desk desk) {
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = wish.lay() ? Answer.laid(wish.plan()) : Answer.asItStands(wish.plan());
    return desk.answered(
        new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement()));
  }

  /** Gone to a finding for which nothing was found. */
  private static Desk without(Desk desk, int number) {
    long generation = desk.laying().laid().orElseThrow().generation();
    return desk.withSight(s -> s.goneTo(number)).offered(new Offer(generation, number, List.of()));
  }

  private static FixFacts facts(Desk desk) {
    return FixFacts.of(desk, WORDS).orElseThrow();
  }

  /** The pad with a joint at its post pushed aside, so that something is broken there. */
  private static Desk pushed() {
    Desk laid = answered(Desk.begun(plan()));
    Slab pad = laid.plan().slabs().getFirst();
    Joint cut =
        pad.joints().stream().filter(j -> j.kind() == JointKind.CONTRACTION).findFirst().get();
    Point by = cut.path().end().minus(cut.path().start()).unit().left().times(7);
    org.jointwright.shape.Path aside =
        org.jointwright.shape.Path.straight(cut.path().start().plus(by), cut.path().end().plus(by));
    return answered(laid.editedOnly(new JointEdit.Move("pad", cut.id(), aside)));
  }

  private static int number(Desk desk, java.util.function.Predicate<Finding> is) {
    List<Finding> all = desk.laying().laid().orElseThrow().findings();
    return all.indexOf(all.stream().filter(is).findFirst().orElseThrow()) + 1;
  }

  private static Desk taken(Desk desk, String text) {
    FixFacts facts = facts(desk);
    int index = facts.steps().indexOf(text);
    assertThat(index).as("%s in %s", text, facts.steps()).isNotNegative();
    return FixFacts.goneOn(desk, facts.finding(), index, WORDS);
  }

  @Test
  void nothingIsSaidBeforeFixesWereLookedForNorWhereThereAreSome() {
    Desk desk = pushed().withSight(s -> s.goneTo(1));
    assertThat(facts(desk).steps()).isEmpty();
    assertThat(facts(desk).left()).isEmpty();
    assertThat(FixFacts.goneOn(desk, 1, 0, WORDS)).isSameAs(desk);
  }

  @Test
  void theOthersCanBeLaidAnewAfterAHandHasMovedOne() {
    Desk desk = without(pushed(), 1);
    Desk anew = taken(desk, "Lay the other joints anew");
    assertThat(anew.laying().wish().orElseThrow().lay()).isTrue();
    assertThat(anew.plan().slabs().getFirst().lockedJoints()).isNotEmpty();
    assertThat(anew.undone().plan()).isEqualTo(desk.plan());
  }

  @Test
  void aFindingAtABoxOutLeadsToTheObject() {
    Desk desk = pushed();
    Point post = new Point(100, 100);
    int near = number(desk, f -> f.at().distance(post) < 40);
    Desk there =
        taken(
            without(desk, near),
            "If post can still be moved: go to it, then drag it or type its place");
    assertThat(there.picked()).isEqualTo(new Pick.AtFixed("post"));
    assertThat(there.sight().step()).isEqualTo(Step.OUTLINE);
    assertThat(there.plan()).isEqualTo(desk.plan());
  }

  @Test
  void theOtherLayoutsAreAStepAway() {
    Desk asked = taken(without(pushed(), 1), "See other layouts of pad");
    assertThat(asked.picked()).isEqualTo(new Pick.WholeSlab("pad"));
    assertThat(asked.laying().choicesOf("pad")).isPresent();
  }

  @Test
  void aLockedJointThatBreaksARuleCanBeUnlocked() {
    Desk desk = pushed();
    Slab pad = desk.plan().slabs().getFirst();
    Finding locked =
        new Finding(
            "S10",
            Severity.SHOULD,
            "pad",
            new Subject.OnJoint(pad.lockedJoints().getFirst().id()),
            pad.lockedJoints().getFirst().path().start(),
            2,
            1,
            "check.s10.slants",
            List.of(),
            List.of());
    NextSteps steps = new NextSteps(desk, desk.laying().laid().orElseThrow(), locked, WORDS);
    Desk free = steps.all().getFirst().taken().apply(desk);
    assertThat(free.plan().slabs().getFirst().lockedJoints()).isEmpty();
    assertThat(free.undone().plan()).isEqualTo(desk.plan());
  }

  @Test
  void whatStaysIsSaidForEveryRuleInBothLanguages() {
    for (Check check : Checks.ALL) {
      Finding finding =
          new Finding(
              check.rule(),
              Severity.SHOULD,
              "pad",
              new Subject.OnSlab(),
              new Point(0, 0),
              2,
              1,
              "check.s10.slants",
              List.of(),
              List.of());
      Optional<IfLeft> left = IfLeft.of(finding);
      assertThat(left.isPresent()).as(check.rule()).isEqualTo(!check.rule().equals("C1"));
      for (Language language : Language.values()) {
        left.ifPresent(
            l ->
                assertThat(Words.of(language, UnitSystem.FEET_INCHES).say(l.key()))
                    .as(check.rule())
                    .isNotBlank()
                    .doesNotContain("fix.left"));
      }
    }
  }

  @Test
  void whatStaysNamesWhereThatComesFrom() {
    Desk desk = pushed();
    FixFacts facts = facts(without(desk, 1));
    assertThat(facts.left().orElseThrow())
        .satisfiesAnyOf(
            t -> assertThat(t).endsWith("(common practice, no source)"),
            t -> assertThat(t).contains("TM 5-809-12"));
    assertThat(facts.texts()).isEmpty();
  }
}
