package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
}
