package org.jointwright.file;

import java.util.Optional;
import java.util.regex.Pattern;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.Kept;

/** Lengths in a file: numbers of the plan's unit, or texts with their own units. */
final class Lengths {
  /** Farther from the origin than this is a slip of the units, inches: over 1,500 miles. */
  static final double FARTHEST = 1e8;

  private static final Pattern NUMBER =
      Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");

  private Lengths() {}

  /** The inches that a value says; a problem is reported when it says none. */
  static Optional<Double> read(Reading reading, Json value, Place place) {
    double inches;
    switch (value) {
      case Json.Figure n -> inches = Decimals.inches(n.text(), reading.unit());
      case Json.Text t -> {
        try {
          inches = LengthReader.read(t.value(), reading.unit()).inches() + 0.0;
        } catch (LengthFormatException e) {
          reading.problem(place, value, e.key(), e.arguments());
          return Optional.empty();
        } catch (IllegalArgumentException e) {
          // A length too large for any number.
          inches = Double.POSITIVE_INFINITY;
        }
      }
      case Json.Members m -> inches = Double.NaN;
      case Json.Items i -> inches = Double.NaN;
      case Json.Flag f -> inches = Double.NaN;
      case Json.Nothing n -> inches = Double.NaN;
      case Json.Raw r -> inches = Double.NaN;
    }
    if (Double.isNaN(inches)) {
      reading.problem(place, value, "file.notALength", Fields.shown(value));
      return Optional.empty();
    }
    if (Math.abs(inches) > FARTHEST) {
      reading.problem(
          place, value, "file.absurdlyLarge", Fields.shown(value), reading.unit().symbol());
      return Optional.empty();
    }
    return Optional.of(inches);
  }

  /** How a length was written, as {@link Kept.Typed} carries it. */
  static String textOf(Json value) {
    return switch (value) {
      case Json.Figure n -> n.text();
      case Json.Text t -> t.value();
      case Json.Members m -> "";
      case Json.Items i -> "";
      case Json.Flag f -> "";
      case Json.Nothing n -> "";
      case Json.Raw r -> r.text();
    };
  }

  /** A coordinate: as it was typed, else the shortest number. */
  static Json coordinate(Kept kept, String field, double inches, LengthUnit unit) {
    return kept.typedFor(field, inches)
        .map(Lengths::typed)
        .orElseGet(() -> new Json.Figure(Decimals.shortest(inches, unit), 0));
  }

  /**
   * A small length such as a thickness: as it was typed, else as {@code "4 in"}, {@code "100 mm"}.
   */
  static Json size(Kept kept, String field, double inches, LengthUnit unit) {
    return spacing(kept, field, inches, unit.isMetric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH);
  }

  /** A length such as a spacing: as it was typed, else in the plan's unit, {@code "10 ft"}. */
  static Json spacing(Kept kept, String field, double inches, LengthUnit unit) {
    return kept.typedFor(field, inches)
        .map(Lengths::typed)
        .orElseGet(() -> Json.of(withUnit(inches, unit)));
  }

  /** A length or volume as it was typed: bare where it was a number. */
  static Json typed(String text) {
    return NUMBER.matcher(text).matches() ? new Json.Figure(text, 0) : Json.of(text);
  }

  private static String withUnit(double inches, LengthUnit unit) {
    String text = Decimals.shortest(inches, unit) + " " + unit.symbol();
    // A text is read by rounding twice, a number once: where that tells, inches are exact.
    return LengthReader.read(text, unit).inches() == inches
        ? text
        : Decimals.shortest(inches, LengthUnit.INCH) + " in";
  }
}
