package org.jointwright.designer.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.designer.facts.StepFacts.Done;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Papers;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.Wish;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** The words of the path agree with its marks. */
class StepFactsTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private static Desk laid() {
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(120, 0), new Point(120, 240), new Point(0, 240)));
    Desk desk = Desk.begun(Plan.EMPTY.withSlabs(List.of(Slab.of("pad", outline))));
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = Answer.laid(wish.plan());
    return desk.answered(
        new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement()));
  }

  private static StepFacts first(Desk desk) {
    return StepFacts.all(desk, WORDS).getFirst();
  }

  private static StepFacts sheets(Desk desk) {
    return StepFacts.all(desk, WORDS).getLast();
  }

  @Test
  void anOutlineIsOpenThenBeingDrawnThenDone() {
    assertThat(first(Desk.blank()).done()).isEqualTo(Done.OPEN);
    assertThat(first(Desk.blank()).fact()).isEqualTo("not begun");
    assertThat(first(Drafting.begin(Desk.blank())).done()).isEqualTo(Done.BEGUN);
    assertThat(first(Drafting.begin(Desk.blank())).fact()).isEqualTo("being drawn");
    assertThat(first(laid()).done()).isEqualTo(Done.DONE);
  }

  @Test
  void whatIsFilledInByItselfIsDoneOnceItWasLookedAtOrCameInAFile() {
    Desk desk = laid();
    assertThat(done(desk, Step.SECTION)).isEqualTo(Done.BEGUN);
    assertThat(done(desk, Step.ORDER)).isEqualTo(Done.BEGUN);
    Desk looked = desk.withStep(Step.SECTION).withStep(Step.OUTLINE);
    assertThat(done(looked, Step.SECTION)).isEqualTo(Done.DONE);
    assertThat(done(looked, Step.ORDER)).isEqualTo(Done.BEGUN);
    assertThat(done(looked.withStep(Step.ORDER), Step.ORDER)).isEqualTo(Done.DONE);
    Desk opened = Desk.opened(desk.plan(), Path.of("drive.jointwright.json"));
    assertThat(done(opened, Step.SECTION)).isEqualTo(Done.DONE);
  }

  private static Done done(Desk desk, Step step) {
    return StepFacts.all(desk, WORDS).stream()
        .filter(f -> f.step() == step)
        .findFirst()
        .orElseThrow()
        .done();
  }

  @Test
  void sheetsAreDoneOnceTheyAreWrittenAndBegunOnceThePlanHasChanged() {
    Desk desk = laid();
    assertThat(sheets(Desk.blank()).fact()).isEqualTo("not begun");
    assertThat(sheets(desk).done()).isEqualTo(Done.OPEN);
    assertThat(sheets(desk).fact()).isEqualTo("not written yet");
    Desk written =
        desk.printed(new Papers.Sheets(desk.plan(), List.of(Path.of("out", "a.pdf")), true));
    assertThat(sheets(written).done()).isEqualTo(Done.DONE);
    assertThat(sheets(written).fact()).isEqualTo("written");
    Desk changed = written.editedOnly(new SlabEdit.SetThickness("pad", Length.inches(5)));
    assertThat(sheets(changed).done()).isEqualTo(Done.BEGUN);
    assertThat(sheets(changed).fact()).isEqualTo("changed since");
    assertThat(sheets(changed.undone()).done()).as("what was printed is back").isEqualTo(Done.DONE);
  }
}
