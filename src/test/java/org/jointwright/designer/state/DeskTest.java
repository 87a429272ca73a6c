package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.measure.Length;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class DeskTest {
  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                  "drive",
                  Outline.of(
                      List.of(
                          new Point(0, 0),
                          new Point(240, 0),
                          new Point(240, 360),
                          new Point(0, 360))))));
  private static final Path FILE = Path.of("plan.jointwright.json");

  private static SlabEdit thickness(double inches) {
    return new SlabEdit.SetThickness("drive", Length.inches(inches));
  }

  private static Laid answer(Desk desk) {
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = wish.lay() ? Answer.laid(wish.plan()) : Answer.asItStands(wish.plan());
    return new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement());
  }

  private static Desk laid(Desk desk) {
    return desk.answered(answer(desk));
  }

  @Test
  void thePlanOpenedWithoutJointsIsLaidAndStillCountsAsKept() {
    Desk desk = laid(Desk.opened(PLAN, FILE));
    assertThat(desk.plan().isLaid()).isTrue();
    assertThat(desk.isKept()).as("closing does not ask").isTrue();
    assertThat(desk.papers().isOnlyLaid()).as("but the file has no joints").isTrue();
    Desk saved = desk.keptIn(FILE, desk.plan(), LocalTime.NOON);
    assertThat(saved.papers().isOnlyLaid()).isFalse();
    assertThat(saved.isKept()).isTrue();
  }

  @Test
  void anOutlineHalfDrawnIsWorkThatIsNotKept() {
    Desk begun = Drafting.begin(Desk.blank());
    assertThat(begun.isKept()).as("no corner yet").isTrue();
    Pointer at = Pointer.on(begun.viewport(), 100, 100, true);
    Desk half = Drafting.click(begun, at, "slab");
    assertThat(half.isHalfDrawn()).isTrue();
    assertThat(half.isKept()).isFalse();
    assertThat(half.letGo().isKept()).isTrue();
  }

  @Test
  void aWishGivenUpLetsTheDeskGoOn() {
    Desk asked = Desk.opened(PLAN, FILE);
    Desk gaveUp = asked.gaveUp(asked.laying().wish().orElseThrow());
    assertThat(gaveUp.laying().isCurrent()).isTrue();
    Desk next = gaveUp.edited(thickness(6));
    assertThat(next.laying().isCurrent()).isFalse();
    assertThat(laid(next).plan().isLaid()).isTrue();
  }

  @Test
  void jointsThatStandInTheFileAreJudgedNotLaid() {
    Plan withJoints = Answer.laid(PLAN).plan();
    Desk desk = Desk.opened(withJoints, FILE);
    assertThat(desk.laying().wish().orElseThrow().lay()).isFalse();
    assertThat(laid(desk).plan()).isEqualTo(withJoints);
  }

  @Test
  void whatWasLaidIsUndoneWithTheStepThatAskedForIt() {
    Desk before = laid(Desk.opened(PLAN, FILE));
    Desk after = laid(before.edited(thickness(6)));
    assertThat(after.plan().slabs().getFirst().joints())
        .isNotEqualTo(before.plan().slabs().getFirst().joints());
    assertThat(after.undone().plan()).isEqualTo(before.plan());
    assertThat(after.undone().redone().plan()).isEqualTo(after.plan());
  }

  @Test
  void anAnswerThatComesTooLateIsShownButChangesNothing() {
    Desk first = Desk.opened(PLAN, FILE).edited(thickness(5));
    Laid late = answer(first);
    Desk moved = first.edited(thickness(6));
    Desk shown = moved.answered(late);
    assertThat(shown.plan()).isEqualTo(moved.plan());
    assertThat(shown.laying().laid()).contains(late);
    assertThat(shown.laying().isCurrent()).isFalse();
    assertThat(laid(shown).answered(late).laying().isCurrent()).as("never back").isTrue();
  }

  @Test
  void undoingPastWhatWasKeptIsNotKept() {
    Desk changed = laid(laid(Desk.opened(PLAN, FILE)).edited(thickness(6)));
    assertThat(changed.papers().isKept()).isFalse();
    Desk kept = changed.keptIn(FILE, changed.plan(), LocalTime.NOON);
    assertThat(kept.papers().isKept()).isTrue();
    assertThat(kept.undone().papers().isKept()).isFalse();
    assertThat(kept.undone().redone().papers().isKept()).isTrue();
  }

  @Test
  void anotherPlansAnswerNeverFits() {
    Desk old = Desk.opened(PLAN, FILE);
    Laid answer = answer(old);
    Desk other = Desk.begun(PLAN).onPaperOf(old);
    assertThat(other.laying().asks(answer)).isFalse();
  }

  @Test
  void eachStepKeepsPickedWhatHasFactsThere() {
    Desk desk = laid(Desk.opened(PLAN, FILE));
    assertThat(desk.withStep(Step.SECTION).picked()).isEqualTo(new Pick.WholeSlab("drive"));
    assertThat(desk.withStep(Step.SECTION).withStep(Step.SHEETS).picked()).isEqualTo(Pick.NOTHING);
  }
}
