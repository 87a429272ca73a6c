package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.app.Remedies;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.findings.FixFacts;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What is offered for a finding holds for the plan that it was worked out for, and no other. */
class OfferTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  /** A slab of 10 by 16 ft whose one joint ends a foot short of the side. */
  private static Plan plan() {
    Joint joint =
        Joint.of(
            "J7",
            JointKind.CONTRACTION,
            org.jointwright.shape.Path.straight(new Point(0, 96), new Point(108, 96)),
            Purpose.SPACING);
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(120, 0), new Point(120, 192), new Point(0, 192)));
    return Plan.EMPTY.withSlabs(
        List.of(Slab.of("pad", outline).withLaid(List.of(joint), List.of())));
  }

  private static Desk judged() {
    Desk desk = Desk.opened(plan(), Path.of("pad.jointwright.json"));
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = Answer.asItStands(wish.plan());
    Laid laid = new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement());
    return desk.answered(laid).withSight(s -> s.goneTo(1));
  }

  private static Offer offer(Desk desk) {
    Laid laid = desk.laying().laid().orElseThrow();
    Remedies remedies = new Remedies(laid.asked(), laid.layout(), laid.judgement());
    return new Offer(laid.generation(), 1, remedies.of(laid.findings().getFirst()));
  }

  @Test
  void whatIsOfferedIsSaidWithTheNumbersOnThePlan() {
    Desk desk = judged();
    assertThat(FixFacts.of(desk, WORDS).orElseThrow().known()).as("not looked for yet").isFalse();
    Desk offered = desk.offered(offer(desk));
    assertThat(FixFacts.of(offered, WORDS).orElseThrow().texts())
        .contains("Run joint 1 on to side B–C.");
    assertThat(offered.laying().offerFor(2)).as("for another finding").isEmpty();
  }

  @Test
  void aFixIsOneStepThatUndoes() {
    Desk desk = judged();
    Desk offered = desk.offered(offer(desk));
    Desk mended = FixFacts.done(offered, 1, 0);
    assertThat(mended.plan()).isNotEqualTo(desk.plan());
    assertThat(mended.history().past()).hasSize(1);
    assertThat(mended.undone().plan()).isEqualTo(desk.plan());
    assertThat(FixFacts.done(mended, 1, 0)).as("twice").isSameAs(mended);
  }

  @Test
  void anOfferForAPlanThatHasChangedSinceIsDropped() {
    Desk desk = judged();
    Offer offer = offer(desk);
    Desk changed = desk.editedOnly(new SlabEdit.SetThickness("pad", Length.inches(5)));
    assertThat(changed.offered(offer).laying().offerFor(1)).isEmpty();
    assertThat(FixFacts.done(changed.offered(offer), 1, 0).plan()).isEqualTo(changed.plan());
    Desk stale = desk.offered(offer).editedOnly(new SlabEdit.SetThickness("pad", Length.inches(5)));
    assertThat(FixFacts.done(stale, 1, 0)).isSameAs(stale);
  }

  @Test
  void aFixOfTheShapeHasTheJointsLaidAnew() {
    Outline over =
        Outline.of(
            List.of(new Point(30, -60), new Point(72, -60), new Point(72, 12), new Point(30, 12)));
    Plan both = plan().withSlabs(List.of(plan().slabs().getFirst(), Slab.of("walk", over)));
    Desk desk = Desk.opened(both, Path.of("pad.jointwright.json"));
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = Answer.asItStands(wish.plan());
    Laid laid = new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement());
    int number = 1 + laid.findings().stream().map(f -> f.rule()).toList().indexOf("M11");
    Remedies remedies = new Remedies(laid.asked(), laid.layout(), laid.judgement());
    Offer offer =
        new Offer(laid.generation(), number, remedies.of(laid.findings().get(number - 1)));
    Desk offered = desk.answered(laid).withSight(s -> s.goneTo(number)).offered(offer);
    assertThat(FixFacts.of(offered, WORDS).orElseThrow().texts())
        .contains(
            "Move walk by 1\u2032-0\u2033, so that it only touches pad.",
            "Cut off what of walk lies over pad.");
    Desk mended = FixFacts.done(offered, number, 0);
    assertThat(mended.plan()).isNotEqualTo(both);
    assertThat(mended.laying().wish().orElseThrow().lay()).isTrue();
    assertThat(mended.undone().plan()).isEqualTo(both);
  }

  @Test
  void aFindingOfAllMarksNamesItsJointByItsNumber() {
    Joint off =
        Joint.of(
            "J7",
            JointKind.CONTRACTION,
            org.jointwright.shape.Path.straight(new Point(0, 100.3), new Point(120, 100.3)),
            Purpose.SPACING);
    Slab pad = plan().slabs().getFirst().withLaid(List.of(off), List.of());
    Desk desk = Desk.opened(Plan.EMPTY.withSlabs(List.of(pad)), Path.of("pad.json"));
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = Answer.asItStands(wish.plan());
    Desk judged =
        desk.answered(
            new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement()));
    assertThat(FindingFacts.all(judged, WORDS))
        .anySatisfy(
            f -> {
              assertThat(f.source()).startsWith("Whole marks, rule S6: ");
              assertThat(f.text()).contains("as joint 1 does");
            });
  }

  @Test
  void aFindingThatNothingSmallMendsSaysSoBeforeItIsGoneToAgain() {
    Desk desk = judged();
    long laid = desk.laying().laid().orElseThrow().generation();
    assertThat(FixFacts.asking(desk, 1, WORDS)).isEqualTo("What can be done?");
    Desk other = desk.offered(offer(desk)).offered(new Offer(laid, 2, List.of()));
    assertThat(FixFacts.asking(other, 1, WORDS)).as("it has fixes").isEqualTo("What can be done?");
    assertThat(other.laying().offerFor(1)).as("both are remembered").isPresent();
    assertThat(other.laying().offerFor(2)).isPresent();
    Desk inVain = desk.offered(new Offer(laid, 1, List.of()));
    assertThat(FixFacts.asking(inVain, 1, WORDS))
        .isEqualTo("No small change mends this. What else?");
    Desk changed = inVain.editedOnly(new SlabEdit.SetThickness("pad", Length.inches(5)));
    assertThat(FixFacts.asking(changed, 1, WORDS)).as("since").isEqualTo("What can be done?");
  }
}
