package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.app.Answer;
import org.jointwright.measure.Length;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.GivenEdit;
import org.jointwright.plan.edit.PourEdit;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.ZoneEdit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A first answer is shown at once; the better one takes its place and becomes part of the plan. */
class LayingTest {
  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                  "pad",
                  Outline.of(
                      List.of(
                          new Point(0, 0),
                          new Point(156, 0),
                          new Point(156, 204),
                          new Point(0, 204))))));

  private static final Desk ASKED =
      Desk.opened(PLAN, java.nio.file.Path.of("pad.jointwright.json"));

  private static Laid whole(Desk desk) {
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = Answer.laid(wish.plan());
    return new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement());
  }

  private static Laid first(Desk desk) {
    return whole(desk).asFirst();
  }

  private static Desk thicker(Desk desk, double inches) {
    return desk.edited(new SlabEdit.SetThickness("pad", Length.inches(inches)));
  }

  @Test
  void theFirstAnswerIsShownButNotYetPartOfThePlan() {
    Laid first = first(ASKED);
    Desk shown = ASKED.answered(first);
    assertThat(shown.laying().laid()).contains(first);
    assertThat(shown.laying().isCurrent()).as("a better one follows").isFalse();
    assertThat(shown.laying().settled()).as("nothing to ask more about").isEmpty();
    assertThat(shown.plan()).isEqualTo(PLAN);
    assertThat(shown.history().past()).isEmpty();
  }

  @Test
  void theBetterAnswerTakesItsPlaceAndIsUndoneWithTheStep() {
    Desk before = ASKED.answered(first(ASKED)).answered(whole(ASKED));
    assertThat(before.laying().isCurrent()).isTrue();
    assertThat(before.plan().isLaid()).isTrue();
    Desk edited = thicker(before, 6);
    Desk after = edited.answered(first(edited)).answered(whole(edited));
    assertThat(after.history().past()).hasSize(1);
    assertThat(after.undone().plan()).isEqualTo(before.plan());
  }

  @Test
  void aFirstAnswerNeverTakesThePlaceOfTheBetterOne() {
    Laid whole = whole(ASKED);
    Desk late = ASKED.answered(whole).answered(first(ASKED));
    assertThat(late.laying().laid()).contains(whole);
    assertThat(late.laying().isCurrent()).isTrue();
  }

  @Test
  void theFirstAnswerToANewerWishIsShownBeforeTheBetterOneToAnOlder() {
    Desk moved = thicker(ASKED, 6);
    Laid newer = first(moved);
    assertThat(moved.answered(whole(ASKED)).answered(newer).laying().laid()).contains(newer);
    assertThat(moved.answered(newer).answered(whole(ASKED)).laying().laid()).contains(newer);
  }

  @Test
  void theLastGoodLayoutStaysInSightUntilTheFirstAnswer() {
    Desk laid = ASKED.answered(whole(ASKED));
    Desk moved = thicker(laid, 6);
    assertThat(moved.laying().laid()).isEqualTo(laid.laying().laid());
    assertThat(moved.laying().isCurrent()).isFalse();
  }

  @Test
  void whatIsLaidNextKeepsThePatternFromBeforeTheDrag() {
    assertThat(ASKED.laying().wish().orElseThrow().before()).isEmpty();
    Laid whole = whole(ASKED);
    Desk moved = thicker(ASKED.answered(whole), 6);
    assertThat(moved.laying().wish().orElseThrow().before()).contains(whole.layout());
    Desk on = thicker(moved.answered(first(moved)), 7);
    assertThat(on.laying().wish().orElseThrow().before())
        .as("no first answer, or the pattern would creep")
        .contains(whole.layout());
    Laid rest = whole(on);
    assertThat(thicker(on.answered(rest), 8).laying().wish().orElseThrow().before())
        .contains(rest.layout());
  }

  @Test
  void thePatternIsNotKeptWhereTheUserAsksForSomethingElse() {
    Desk laid = ASKED.answered(whole(ASKED));
    Outline zone = Outline.of(List.of(new Point(60, 60), new Point(90, 60), new Point(90, 90)));
    for (Edit edit :
        List.of(
            new ZoneEdit.Add("pad", KeepClear.of("", zone)),
            new SlabEdit.SetPreference("pad", Preference.Overall.SQUAREST),
            new PourEdit(new Pour(Optional.empty(), Optional.of(Length.feet(8)), Kept.NOTHING)),
            new GivenEdit.Add(
                GivenJoint.of(Path.straight(new Point(70, 0), new Point(70, -60)))))) {
      assertThat(laid.edited(edit).laying().wish().orElseThrow().before()).isEmpty();
    }
  }

  @Test
  void aWishGivenUpAfterItsFirstAnswerLeavesThatInSight() {
    Laid first = first(ASKED);
    Desk gaveUp = ASKED.answered(first).gaveUp(ASKED.laying().wish().orElseThrow());
    assertThat(gaveUp.laying().isCurrent()).isTrue();
    assertThat(gaveUp.laying().laid()).contains(first);
  }

  @Test
  void aLayingThatIsStoppedKeepsItsFirstAnswerForGood() {
    Desk stopped = ASKED.answered(first(ASKED)).stopped();
    assertThat(stopped.laying().isCurrent()).isTrue();
    assertThat(stopped.laying().isGivenUp()).isFalse();
    assertThat(stopped.plan().isLaid()).isTrue();
    assertThat(stopped.stopped()).as("nothing is going on").isSameAs(stopped);
  }

  @Test
  void aLayingThatIsStoppedBeforeAnyAnswerCanBeBegunAgain() {
    Desk stopped = ASKED.stopped();
    assertThat(stopped.laying().isCurrent()).isTrue();
    assertThat(stopped.laying().isGivenUp()).isTrue();
    assertThat(stopped.plan()).isEqualTo(PLAN);
    Desk again = stopped.layingAgain();
    assertThat(again.laying().isGivenUp()).isFalse();
    assertThat(again.laying().wish().orElseThrow().lay()).isTrue();
    assertThat(again.answered(whole(again)).plan().isLaid()).isTrue();
  }

  @Test
  void anAnswerThatComesAfterItWasStoppedIsNotTaken() {
    Laid first = first(ASKED);
    Desk stopped = ASKED.answered(first).stopped();
    assertThat(stopped.answered(first).plan()).isEqualTo(stopped.plan());
  }

  @Test
  void anEditThatLeavesJointsAloneDoesNotPutOffTheirLaying() {
    Edit name =
        new org.jointwright.plan.edit.JobEdit(
            new org.jointwright.plan.Job("x", "", "", "", "", "", Kept.NOTHING));
    assertThat(ASKED.editedOnly(name).laying().wish().orElseThrow().lay()).isTrue();
    Desk laid = ASKED.answered(whole(ASKED));
    assertThat(laid.editedOnly(name).laying().wish().orElseThrow().lay()).isFalse();
  }
}
