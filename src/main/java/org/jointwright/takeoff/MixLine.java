package org.jointwright.takeoff;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.Mix;
import org.jointwright.plan.Mix.Exposure;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Limit;
import org.jointwright.practice.Mixes;

/**
 * What a dispatcher is told in one breath.
 *
 * @param strength pounds on a square inch
 * @param asked the least strength that the exposure asks; more than {@code strength} where the user
 *     ordered a weaker mix
 * @param air percent of the volume; empty where none is asked
 * @param airTolerance how far the air may be off, percent
 * @param stone the nominal maximum size of the stone
 * @param slump how far it may slump
 * @param water the most water for each part of cement; empty where no limit is known
 * @param fiber whether fibers go in
 * @param exposure what it is meant for
 * @param sources where strength, air and slump come from
 */
public record MixLine(
    int strength,
    int asked,
    Optional<Double> air,
    double airTolerance,
    Length stone,
    Length slump,
    Optional<Double> water,
    boolean fiber,
    Exposure exposure,
    List<Cited> sources) {
  /** Copies the list. */
  public MixLine {
    sources = List.copyOf(sources);
  }

  /** The line for a mix. */
  public static MixLine of(Mix mix) {
    Exposure exposure = mix.exposure();
    Limit<Integer> strength = Mixes.strength(exposure);
    Optional<Mixes.Air> row =
        Mixes.AIR.value().stream()
            .filter(a -> Math.abs(a.stone().inches() - mix.stone().inches()) < 1.0 / 16)
            .findFirst();
    Optional<Double> air =
        switch (exposure) {
          case NEGLIGIBLE -> Optional.empty();
          case MODERATE -> row.map(Mixes.Air::moderate);
          case SEVERE, DEICERS -> row.map(Mixes.Air::severe);
        };
    return new MixLine(
        mix.strength().orElse(strength.value()),
        strength.value(),
        air,
        Mixes.AIR_TOLERANCE.value(),
        mix.stone(),
        mix.slump().orElse(Mixes.SLUMP.value()),
        exposure == Exposure.DEICERS
            ? Optional.of(Mixes.WATER_WITH_SALT.value())
            : Optional.empty(),
        mix.fiber(),
        exposure,
        List.of(strength.source(), Mixes.AIR.source(), Mixes.SLUMP.source()));
  }

  /** Whether the user ordered a weaker mix than the exposure asks. */
  public boolean isWeak() {
    return strength < asked;
  }
}
