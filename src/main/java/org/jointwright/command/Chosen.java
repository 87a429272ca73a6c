package org.jointwright.command;

import java.util.Arrays;
import java.util.List;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.jspecify.annotations.Nullable;

/** What the words after options choose; another word ends the command with those that may stand. */
final class Chosen {
  private static final List<String> LANGUAGES =
      Arrays.stream(Language.values()).map(Language::code).toList();
  private static final List<String> UNITS = List.of("ft", "m");

  private Chosen() {}

  /** Refuses a language or measures that there are not, before a plan is read for nothing. */
  static void check(String language, @Nullable String units) {
    among("--lang", language, LANGUAGES);
    if (units != null) {
      among("--units", units, UNITS);
    }
  }

  /**
   * The words of {@code --lang} and {@code --units}.
   *
   * @param units null for the plan's own
   */
  static Words words(String language, @Nullable String units, Plan plan) {
    UnitSystem system =
        units == null
            ? UnitSystem.of(plan.unit())
            : units.equals("m") ? UnitSystem.METRIC : UnitSystem.FEET_INCHES;
    return Words.of(Language.of(language).orElseThrow(), system);
  }

  /** Refuses a word that is not among the choices. */
  static void among(String option, String word, List<String> choices) {
    if (!choices.contains(word)) {
      String all = String.join(", ", choices);
      throw new Stop(
          Outcome.USAGE, Said.WORDS.say("command.sheet.unknownChoice", option, word, all));
    }
  }
}
