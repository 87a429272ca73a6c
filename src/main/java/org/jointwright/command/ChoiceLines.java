package org.jointwright.command;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.app.LayoutChoice;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.text.Words;

/** The choices of layout of a plan, a line each. */
final class ChoiceLines {
  private final Plan plan;
  private final Words words;

  ChoiceLines(Plan plan) {
    this.plan = plan;
    this.words = Words.english(UnitSystem.of(plan.unit()));
  }

  /** Every slab, and under it what may be chosen. */
  String report() {
    List<String> lines = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      lines.add(words.say("command.joint.choicesOf", slab.id()));
      for (LayoutChoice c : LayoutChoice.of(plan, slab.id())) {
        lines.add(
            "  "
                + words.say(
                    "command.joint.oneChoice",
                    c.name(words),
                    c.figuresSaid(words),
                    ChoiceWord.of(c)));
      }
    }
    return String.join("\n", lines) + "\n";
  }
}
