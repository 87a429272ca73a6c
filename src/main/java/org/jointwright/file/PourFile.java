package org.jointwright.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumePrinter;
import org.jointwright.measure.VolumeReader;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.plan.Pour;

/** Reads and writes how much is poured at a time. */
final class PourFile {
  private PourFile() {}

  static Pour read(Reading reading, Fields f) {
    Optional<Volume> most = volume(reading, f);
    return new Pour(most, f.length("strip", Bounds.STRIP), f.kept());
  }

  private static Optional<Volume> volume(Reading reading, Fields f) {
    Json value = f.take("most");
    if (value == null) {
      return Optional.empty();
    }
    UnitSystem system = UnitSystem.of(reading.unit());
    Place place = f.place().key("most");
    String text =
        value instanceof Json.Text || value instanceof Json.Figure ? Lengths.textOf(value) : "";
    Optional<Volume> read = VolumeReader.read(text, VolumeUnit.of(system));
    if (read.isEmpty()) {
      reading.problem(place, value, "file.notAVolume", Fields.shown(value));
      return read;
    }
    Volume volume = read.get();
    if (volume.compareTo(Pour.LEAST) < 0 || volume.compareTo(Pour.MOST) > 0) {
      reading.problem(
          place,
          value,
          "file.pourOutOfBounds",
          Fields.shown(value),
          VolumePrinter.print(Pour.LEAST, system),
          VolumePrinter.print(Pour.MOST, system));
      return Optional.empty();
    }
    f.keepTyped("most", value, volume.cubicInches());
    return read;
  }

  static Map<String, Json> members(Pour pour, LengthUnit unit) {
    Map<String, Json> members = new LinkedHashMap<>();
    pour.most()
        .ifPresent(
            v ->
                members.put(
                    "most",
                    pour.kept()
                        .typedFor("most", v.cubicInches())
                        .map(Lengths::typed)
                        .orElseGet(() -> Json.of(text(v, unit)))));
    pour.strip()
        .ifPresent(
            s -> members.put("strip", Lengths.spacing(pour.kept(), "strip", s.inches(), unit)));
    PlanWriter.addUnknown(pour.kept(), members);
    return members;
  }

  /** In the unit that concrete is ordered by where a figure of it says the volume exactly. */
  private static String text(Volume volume, LengthUnit unit) {
    VolumeUnit usual = VolumeUnit.of(UnitSystem.of(unit));
    return exact(volume, usual)
        .or(() -> exact(volume, VolumeUnit.CUBIC_YARD))
        .or(() -> exact(volume, VolumeUnit.CUBIC_METRE))
        .orElseGet(() -> said(volume.in(usual), usual));
  }

  private static Optional<String> exact(Volume volume, VolumeUnit unit) {
    double near = volume.in(unit);
    double round = new BigDecimal(near).round(new MathContext(12)).doubleValue();
    for (double tried : new double[] {round, near, Math.nextUp(near), Math.nextDown(near)}) {
      if (Volume.of(tried, unit).equals(volume)) {
        return Optional.of(said(tried, unit));
      }
    }
    return Optional.empty();
  }

  private static String said(double value, VolumeUnit unit) {
    return Decimals.number(value) + " " + unit.symbol();
  }
}
