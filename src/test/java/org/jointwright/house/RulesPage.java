package org.jointwright.house;

import static org.jointwright.measure.UnitSystem.FEET_INCHES;
import static org.jointwright.measure.UnitSystem.METRIC;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jointwright.check.Check;
import org.jointwright.check.judge.Checks;
import org.jointwright.measure.Density;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthPrinter;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.RatePrinter;
import org.jointwright.measure.Rounding;
import org.jointwright.measure.Spread;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumePrinter;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Limit;
import org.jointwright.text.Words;

/** The page of rules and figures, made from the classes that hold them. */
final class RulesPage {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);
  private static final Path PRACTICE = House.MAIN.resolve("org/jointwright/practice");

  private RulesPage() {}

  static String text() {
    StringBuilder page = new StringBuilder();
    page.append("# Rules and figures\n\n");
    page.append(
        "Made from the rule classes in `check` and the figures in `practice`; a test"
            + " compares.\n\n");
    page.append("## Rules\n| rule | severity | what it asks, and why | its limits come from |\n");
    page.append("|---|---|---|---|\n");
    for (Check check : Checks.ALL) {
      row(
          page,
          check.rule() + " " + WORDS.say(check.nameKey()),
          WORDS.say("check.severity." + check.severity().name().toLowerCase(Locale.ROOT)),
          WORDS.say(check.aboutKey()),
          sources(check.sources()));
    }
    page.append("\n## Figures\n| figure | value | source |\n|---|---|---|\n");
    for (Path file : House.files(PRACTICE, ".java")) {
      String name = file.getFileName().toString().replace(".java", "");
      if (!name.equals("package-info")) {
        figures(page, name);
      }
    }
    return page.toString();
  }

  private static void figures(StringBuilder page, String type) {
    try {
      Field[] fields = Class.forName(House.ROOT + ".practice." + type).getDeclaredFields();
      Arrays.sort(fields, Comparator.comparing(Field::getName));
      for (Field field : fields) {
        if (Modifier.isPublic(field.getModifiers())
            && field.getType() == Limit.class
            && field.get(null) instanceof Limit<?> limit) {
          row(page, type + " " + words(field), value(limit.value()), sources(limit.sources()));
        }
      }
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String words(Field field) {
    return field.getName().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String value(Object value) {
    return switch (value) {
      case Length length ->
          LengthPrinter.print(
              length, isMetric(length) ? Rounding.MILLIMETRE : Rounding.SIXTEENTH_INCH);
      case Volume volume ->
          VolumePrinter.print(
              volume, isWhole(volume.in(VolumeUnit.CUBIC_METRE) * 4) ? METRIC : FEET_INCHES);
      case Density density -> RatePrinter.print(density, FEET_INCHES);
      case Spread spread -> RatePrinter.print(spread, FEET_INCHES);
      case List<?> list -> list.stream().map(RulesPage::value).collect(Collectors.joining(", "));
      default -> value.toString();
    };
  }

  /** Whether it is whole millimetres and no figure of a tape in inches. */
  private static boolean isMetric(Length length) {
    return !isWhole(length.inches() * 16) && isWhole(length.in(LengthUnit.MILLIMETRE));
  }

  private static boolean isWhole(double value) {
    return Math.abs(value - Math.rint(value)) < 1e-6;
  }

  private static String sources(List<Cited> sources) {
    return sources.stream()
        .map(
            s ->
                WORDS.say(
                    "check.source." + s.flag().name().toLowerCase(Locale.ROOT), s.reference()))
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static void row(StringBuilder page, String... cells) {
    page.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }
}
