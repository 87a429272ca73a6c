package org.jointwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.app.LayoutChoice;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.text.Words;

/** The choices of layout of a plan, a line each. */
final class ChoiceLines {
  /** What each choice is called on the command line. */
  private static final Map<String, Preference> WORDS =
      Map.of(
          "shortest", Preference.Overall.SHORTEST,
          "squarest", Preference.Overall.SQUAREST);

  private final Plan plan;
  private final Words words;

  ChoiceLines(Plan plan) {
    this.plan = plan;
    this.words = Words.english(UnitSystem.of(plan.unit()));
  }

  /** The choice that a word names; another word ends the command. */
  static Preference preference(String word) {
    Preference found = WORDS.get(word);
    if (found == null) {
      throw new Stop(Outcome.USAGE, Said.WORDS.say("command.joint.noChoice", word));
    }
    return found;
  }

  /** Every slab, and under it what may be chosen. */
  String report() {
    List<String> lines = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      lines.add(words.say("command.joint.choicesOf", slab.id()));
      for (LayoutChoice c : LayoutChoice.of(plan, slab.id())) {
        lines.add("  " + words.say("command.joint.oneChoice", c.name(words), c.figuresSaid(words)));
      }
    }
    return String.join("\n", lines) + "\n";
  }
}
