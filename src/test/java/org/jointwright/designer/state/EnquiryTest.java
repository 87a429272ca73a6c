package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.app.LayoutChoice;
import org.jointwright.designer.facts.ChoiceFacts;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What is asked about a slab holds for the layout that it was asked about, and no other. */
class EnquiryTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);
  private static final String PAD = "pad";

  /** A patio of 13 by 17 ft, laid, the slab picked. */
  private static Desk laid() {
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(156, 0), new Point(156, 204), new Point(0, 204)));
    Plan plan = Plan.EMPTY.withSlabs(List.of(Slab.of(PAD, outline)));
    return settled(Desk.begun(plan)).picking(new Pick.WholeSlab(PAD));
  }

  private static Desk settled(Desk desk) {
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = wish.lay() ? Answer.laid(wish.plan()) : Answer.asItStands(wish.plan());
    return desk.answered(
        new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement()));
  }

  private static Desk found(Desk asking) {
    Enquiry<List<LayoutChoice>> asked = asking.laying().choicesOf(PAD).orElseThrow();
    return asking.found(asked.with(LayoutChoice.of(asking.plan(), PAD)));
  }

  private static ChoiceFacts facts(Desk desk) {
    return ChoiceFacts.of(desk, WORDS).orElseThrow();
  }

  private static List<Boolean> inForce(Desk desk) {
    return facts(desk).choices().orElseThrow().stream().map(ChoiceFacts.One::isInForce).toList();
  }

  @Test
  void layoutsAreShownOnceTheyAreAskedForAndWorkedOut() {
    Desk desk = laid();
    assertThat(facts(desk).isAsked()).isFalse();
    Desk asking = facts(desk).turned(desk);
    assertThat(facts(asking).isAsked()).isTrue();
    assertThat(facts(asking).choices()).isEmpty();
    Desk found = found(asking);
    assertThat(inForce(found)).startsWith(true, false);
    assertThat(facts(facts(found).turned(found)).isAsked()).as("put away").isFalse();
  }

  @Test
  void takingOneIsOneStepAndTheOthersStayInSight() {
    Desk desk = laid();
    Desk found = found(desk.choosing(PAD));
    Desk taken = ChoiceFacts.taken(found, PAD, 1);
    Slab slab = taken.plan().slab(PAD).orElseThrow();
    assertThat(slab.jointing().preference()).isEqualTo(Preference.Overall.SQUAREST);
    assertThat(inForce(taken)).startsWith(false, true);
    Desk judged = settled(taken);
    assertThat(inForce(judged)).startsWith(false, true);
    assertThat(judged.history().past()).hasSize(1);
    assertThat(judged.undone().plan()).isEqualTo(desk.plan());
    Desk back = settled(ChoiceFacts.taken(judged, PAD, 0));
    assertThat(inForce(back)).startsWith(true, false);
    assertThat(back.plan()).isEqualTo(desk.plan());
  }

  @Test
  void whatIsShownAfterTakingOneIsWhatWouldBeFoundAnew() {
    Desk found = found(laid().choosing(PAD));
    Desk taken = settled(ChoiceFacts.taken(found, PAD, 1));
    assertThat(LayoutChoice.of(taken.plan(), PAD).stream().map(LayoutChoice::figures))
        .containsExactlyElementsOf(
            LayoutChoice.of(found.plan(), PAD).stream().map(LayoutChoice::figures).toList());
  }

  @Test
  void anAnswerForAPlanThatHasChangedSinceIsDropped() {
    Desk asking = laid().choosing(PAD);
    Desk changed = settled(asking.editedOnly(new SlabEdit.SetThickness(PAD, Length.inches(5))));
    Enquiry<List<LayoutChoice>> asked = asking.laying().choicesOf(PAD).orElseThrow();
    Desk late = changed.found(asked.with(List.of()));
    assertThat(facts(late).isAsked()).isFalse();
    assertThat(ChoiceFacts.taken(late, PAD, 0)).isSameAs(late);
    assertThat(asking.laying().choicesOf("other")).isEmpty();
  }

  @Test
  void nothingIsAskedOfALayoutThatIsNotThereYet() {
    Desk busy = laid().edited(new SlabEdit.SetThickness(PAD, Length.inches(5)));
    assertThat(busy.choosing(PAD).laying().choicesOf(PAD)).isEmpty();
  }

  @Test
  void howNearItIsHoldsForTheLayoutThatWasAskedAbout() {
    Desk asking = laid().measuring(PAD);
    Enquiry<String> asked = asking.laying().nearOf(PAD).orElseThrow();
    assertThat(asked.answer()).isEmpty();
    Desk said = asking.measured(asked.with("said"));
    assertThat(said.laying().nearOf(PAD).flatMap(Enquiry::answer)).hasValue("said");
    assertThat(said.notMeasuring().laying().nearOf(PAD)).isEmpty();
    assertThat(asking.notMeasuring().measured(asked.with("late")).laying().nearOf(PAD)).isEmpty();
    Desk changed = settled(said.editedOnly(new SlabEdit.SetThickness(PAD, Length.inches(5))));
    assertThat(changed.laying().nearOf(PAD)).isEmpty();
    assertThat(changed.measured(asked.with("late")).laying().nearOf(PAD)).isEmpty();
  }

  @Test
  void takingAnotherLayoutForgetsHowNearTheFirstWas() {
    Desk said = found(laid().choosing(PAD)).measuring(PAD);
    assertThat(ChoiceFacts.taken(said, PAD, 1).laying().nearOf(PAD)).isEmpty();
  }
}
