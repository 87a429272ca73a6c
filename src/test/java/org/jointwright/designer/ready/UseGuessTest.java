package org.jointwright.designer.ready;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.designer.ready.UseGuess.From;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Use;
import org.jointwright.plan.edit.History;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A use that nobody has said is told from one that somebody has. */
class UseGuessTest {
  private static final Slab SLAB =
      Slab.of(
          "slab 1", Outline.of(List.of(new Point(0, 0), new Point(240, 0), new Point(240, 240))));

  private static History drawn() {
    return History.begun(Plan.EMPTY).done(new SlabEdit.Add(SLAB));
  }

  private static History named(History before, Use use) {
    return before.done(
        new Together(
            List.of(new SlabEdit.Rename("slab 1", "patio"), new SlabEdit.SetUse("patio", use))));
  }

  @Test
  void whatWasDrawnIsGuessedFromItsSizeUnderAnyName() {
    assertThat(UseGuess.from(drawn(), "slab 1")).contains(From.SIZE);
    History named = drawn().done(new SlabEdit.Rename("slab 1", "drive"));
    assertThat(UseGuess.from(named, "drive")).contains(From.SIZE);
    assertThat(UseGuess.from(named, "another")).isEmpty();
  }

  @Test
  void aNameThatChangesTheUseIsWhatItIsGuessedFrom() {
    History named = named(drawn(), Use.FOOT);
    assertThat(UseGuess.from(named, "patio")).contains(From.NAME);
    History again = named.done(new SlabEdit.Rename("patio", "terrace"));
    assertThat(UseGuess.from(again, "terrace")).contains(From.NAME);
  }

  @Test
  void whatWasSaidOrCameInAFileIsNoGuess() {
    History said = named(drawn(), Use.FOOT).done(new SlabEdit.SetUse("patio", Use.CAR));
    assertThat(UseGuess.from(said, "patio")).isEmpty();
    assertThat(UseGuess.from(said.undone(), "patio")).contains(From.NAME);
    Plan plan = Plan.EMPTY.withSlabs(List.of(SLAB));
    assertThat(UseGuess.from(History.opened(plan), "slab 1")).isEmpty();
  }
}
