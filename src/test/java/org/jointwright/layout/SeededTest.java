package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import org.jointwright.check.figure.Figures;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented slabs that were once laid badly. */
class SeededTest {
  @Test
  void eachIsAPlanAndSaysWhatIsOpenOrThatItIsMended() throws IOException {
    Map<Seeded, String> kept = Seeded.kept();
    assertThat(kept).isNotEmpty();
    kept.forEach(
        (plan, said) -> {
          assertThat(plan.plan().slabs()).as(plan.name()).isNotEmpty();
          assertThat(said).as(plan.name()).matches("(open: |mended).+");
        });
  }

  /** Some of the mended ones stay so; the rest take longer and are laid by a sweep. */
  @ParameterizedTest
  @ValueSource(strings = {"FLARE-44", "FLARE-61", "TRIANGLE-8", "TRAPEZOID-73"})
  void whatIsMendedStaysSo(String name) throws IOException {
    Seeded mended = Seeded.named(name);
    assertThat(Seeded.kept().get(mended)).startsWith("mended");
    assertThat(Swept.faults(mended.plan(), LayoutEngine.lay(mended.plan()))).as(name).isEmpty();
  }

  /**
   * Where no grid fits, a first layout is a ladder or begins at sharp corners and round narrow
   * openings; with what it may cost at most, ft.
   */
  @ParameterizedTest
  @CsvSource({
    "FLARE-5, 26",
    "OPENING-59, 240",
    "ACUTE_LOT-10, 240",
    "TRAPEZOID-42, 140",
    "SKEW-33, 240",
    "SKEW-7, 255"
  })
  void whatNoGridFitsIsSoundAtFirstSight(String name, double feet) {
    Plan plan = Seeded.named(name).plan();
    Layout first = LayoutEngine.first(plan);
    assertThat(Swept.faults(plan, first)).as(name).isEmpty();
    assertThat(Figures.of(plan, first).cost()).as(name).isLessThan(feet);
  }
}
