package org.jointwright.designer.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Slab.Coloring;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** Finish, pattern and color of the slab that is picked, typed and undone. */
class SlabFactsTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private static Desk desk() {
    return Desk.opened(
            LaidPlans.plan("drive-walk-and-pad.jointwright"), Path.of("some.jointwright.json"))
        .withStep(Step.OUTLINE)
        .picking(new Pick.WholeSlab("pad"));
  }

  private static List<Row> rows(Desk desk) {
    return FactsOf.desk(desk, WORDS).rows();
  }

  private static Optional<Row> row(Desk desk, String id) {
    return rows(desk).stream().filter(r -> r.id().equals(id)).findFirst();
  }

  private static Desk typed(Desk desk, String id, String text) {
    return ((Row.Typed) row(desk, id).orElseThrow()).change().apply(text).apply(desk);
  }

  private static Desk chosen(Desk desk, String id, int option) {
    return ((Row.Choice) row(desk, id).orElseThrow()).change().apply(option).apply(desk);
  }

  private static Finishing pad(Desk desk) {
    return desk.plan().slab("pad").orElseThrow().finishing();
  }

  @Test
  void colorIsTypedAndThenHowItComesIn() {
    Desk desk = desk();
    assertThat(row(desk, "slab-coloring")).isEmpty();
    Desk colored = chosen(typed(desk, "slab-color", " adobe "), "slab-coloring", 1);

    assertThat(pad(colored).color()).isEqualTo("adobe");
    assertThat(pad(colored).coloring()).isEqualTo(Coloring.SHAKE_ON);
    assertThat(pad(colored).finish()).isEqualTo(pad(desk).finish());
    assertThat(row(typed(colored, "slab-color", ""), "slab-coloring")).isEmpty();
    assertThat(colored.laying().laid()).isEqualTo(desk.laying().laid());
  }

  @Test
  void patternIsAskedOfStampedSlabsOnly() {
    Desk desk = desk();
    assertThat(row(desk, "slab-pattern")).isEmpty();
    Desk stamped =
        typed(chosen(desk, "slab-finish", Finish.STAMPED.ordinal() + 1), "slab-pattern", "ashlar");

    assertThat(pad(stamped).pattern()).isEqualTo("ashlar");
    assertThat(row(chosen(stamped, "slab-finish", 1), "slab-pattern")).isEmpty();
  }

  @Test
  void aNameTooLongIsRefusedAndTheLongestIsNot() {
    Desk desk = desk();
    assertThat(pad(typed(desk, "slab-color", "x".repeat(60))).color()).hasSize(60);
    assertThatThrownBy(() -> typed(desk, "slab-color", "x".repeat(61)))
        .isInstanceOf(BadFigure.class);
  }
}
