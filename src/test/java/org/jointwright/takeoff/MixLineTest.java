package org.jointwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Mix;
import org.jointwright.plan.Mix.Exposure;
import org.jointwright.practice.Mixes;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the dispatcher is told, by exposure and size of stone. */
class MixLineTest {
  private static Mix mix(Exposure exposure, double stone) {
    return new Mix(
        exposure, Length.inches(stone), Optional.empty(), Optional.empty(), false, Kept.NOTHING);
  }

  /**
   * IRC table R402.2 as summarized (porches, carport slabs and steps exposed to the weather):
   * 2,500, 3,000 and 3,500 psi; ACI 332-20 class RF3 as told by an association: 4,500 psi.
   */
  @ParameterizedTest
  @CsvSource({"NEGLIGIBLE, 2500", "MODERATE, 3000", "SEVERE, 3500", "DEICERS, 4500"})
  void strengthComesFromTheExposure(Exposure exposure, int psi) {
    assertThat(MixLine.of(mix(exposure, 0.75)).strength()).isEqualTo(psi);
  }

  /** ACI 318-19 table 19.3.3.1, classes F1 and F2, from memory. */
  @ParameterizedTest
  @CsvSource({
    "0.375, 6, 7.5",
    "0.5, 5.5, 7",
    "0.75, 5, 6",
    "1, 4.5, 6",
    "1.5, 4.5, 5.5",
    "2, 4, 5"
  })
  void airComesFromTheStone(double stone, double moderate, double severe) {
    assertThat(MixLine.of(mix(Exposure.MODERATE, stone)).air()).contains(moderate);
    assertThat(MixLine.of(mix(Exposure.SEVERE, stone)).air()).contains(severe);
    assertThat(MixLine.of(mix(Exposure.DEICERS, stone)).air()).contains(severe);
    assertThat(MixLine.of(mix(Exposure.NEGLIGIBLE, stone)).air()).isEmpty();
  }

  /** UFGS 03311 table 3, read: the figures of the other document lie within its bands. */
  @Test
  void airLiesWithinThePublishedBands() {
    List<Mixes.Air> rows = Mixes.AIR.value();
    for (int i = 0; i < rows.size(); i++) {
      List<Double> band = Mixes.AIR_BAND.value().get(i);
      assertThat(rows.get(i).severe()).isBetween(band.get(0), band.get(1));
    }
    assertThat(rows.stream().map(Mixes.Air::stone)).isEqualTo(Mix.STONES);
  }

  @Test
  void aWeakerMixIsSaid() {
    Mix weak =
        new Mix(
            Exposure.DEICERS,
            Length.inches(0.75),
            Optional.of(3500),
            Optional.of(Length.inches(5)),
            true,
            Kept.NOTHING);
    MixLine line = MixLine.of(weak);
    OrderWords words = new OrderWords(Words.english(UnitSystem.FEET_INCHES));
    assertThat(line.isWeak()).isTrue();
    assertThat(words.mix(line))
        .isEqualTo(
            "3,500 psi, air 6 % ± 1.5, stone ¾″, slump 5″ at most, water to cement 0.45 at most,"
                + " with fiber.");
    assertThat(words.meant(line)).contains("4,500 psi");
    assertThat(MixLine.of(mix(Exposure.DEICERS, 0.75)).isWeak()).isFalse();
  }

  @Test
  void itIsSaidInSpanishAndMetres() {
    OrderWords words = new OrderWords(Words.of(Language.SPANISH, UnitSystem.METRIC));
    assertThat(words.mix(MixLine.of(Mix.USUAL)))
        .isEqualTo(
            "24 MPa, aire 6 % ± 1.5, piedra 20 mm, revenimiento 100 mm a lo más, sin fibra.");
  }
}
