package org.jointwright.designer.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.settings.Measures;
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

  private static String refused(Desk desk, String id, String text) {
    return catchThrowableOfType(BadFigure.class, () -> typed(desk, id, text)).key();
  }

  /** In metres a bare figure of a section is millimetres, but who writes 12 means centimetres. */
  @Test
  void aFewBareMillimetresAreAskedAbout() {
    Desk metres = desk().measuredIn(Measures.METRIC);
    assertThat(refused(metres, "slab-thickness", "12")).isEqualTo("window.figure.whichUnit");
    assertThat(refused(metres, "slab-base", "24.9")).isEqualTo("window.figure.whichUnit");
    assertThat(thickness(typed(metres, "slab-thickness", "12 cm"))).isCloseTo(4.724, within(1e-3));
    assertThat(thickness(typed(metres, "slab-thickness", "26"))).isCloseTo(1.024, within(1e-3));
    assertThat(thickness(typed(desk(), "slab-thickness", "12"))).isEqualTo(12);
    assertThat(typed(metres, "slab-base", "0").plan().slab("pad").orElseThrow().base().inches())
        .isZero();
  }

  @Test
  void aSlabIsAnInchThickAtLeastAndTwoFeetAtMost() {
    assertThat(refused(desk(), "slab-thickness", "0.9")).isEqualTo("window.figure.tooThin");
    assertThat(thickness(typed(desk(), "slab-thickness", "1"))).isEqualTo(1);
    assertThat(thickness(typed(desk(), "slab-thickness", "24"))).isEqualTo(24);
    assertThat(refused(desk(), "slab-thickness", "24.1")).isEqualTo("window.figure.tooThick");
  }

  private static double thickness(Desk desk) {
    return desk.plan().slab("pad").orElseThrow().thickness().inches();
  }
}
