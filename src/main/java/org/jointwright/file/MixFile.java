package org.jointwright.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.Mix;
import org.jointwright.plan.Mix.Exposure;

/** Reads and writes the concrete that is ordered. */
final class MixFile {
  /** Stone is sold by names that metric and inch sizes share: 20 mm is 3/4 in. */
  private static final double SAME_SIZE = 0.1;

  private MixFile() {}

  static Mix read(Reading reading, Fields f) {
    Exposure exposure =
        f.choice("exposure", Exposure.values(), FileWords.EXPOSURE).orElse(Mix.USUAL.exposure());
    OptionalDouble strength = f.number("strength", Mix.WEAKEST, Mix.STRONGEST);
    return new Mix(
        exposure,
        stone(reading, f),
        strength.isPresent()
            ? Optional.of((int) Math.round(strength.getAsDouble()))
            : Optional.empty(),
        f.length("slump", Bounds.SLUMP),
        f.flag("fiber"),
        f.kept());
  }

  private static Length stone(Reading reading, Fields f) {
    Json value = f.members().get("stone");
    Optional<Length> given = f.length("stone", Bounds.STONE);
    if (given.isEmpty() || value == null) {
      return Mix.USUAL.stone();
    }
    Optional<Length> size =
        Mix.STONES.stream()
            .filter(s -> Math.abs(s.inches() - given.get().inches()) < SAME_SIZE * s.inches())
            .findFirst();
    if (size.isEmpty()) {
      reading.problem(f.place().key("stone"), value, "file.noSuchStone", Fields.shown(value));
    }
    return size.orElse(Mix.USUAL.stone());
  }

  static Map<String, Json> members(Mix mix, LengthUnit unit) {
    Map<String, Json> members = new LinkedHashMap<>();
    if (mix.exposure() != Mix.USUAL.exposure()) {
      members.put("exposure", Json.of(FileWords.EXPOSURE.apply(mix.exposure())));
    }
    if (!mix.stone().equals(Mix.USUAL.stone())) {
      members.put(
          "stone",
          Lengths.spacing(
              mix.kept(),
              "stone",
              mix.stone().inches(),
              unit.isMetric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH));
    }
    mix.strength().ifPresent(s -> members.put("strength", new Json.Figure(Integer.toString(s), 0)));
    mix.slump()
        .ifPresent(s -> members.put("slump", Lengths.size(mix.kept(), "slump", s.inches(), unit)));
    if (mix.fiber()) {
      members.put("fiber", Json.of(true));
    }
    PlanWriter.addUnknown(mix.kept(), members);
    return members;
  }
}
