package org.jointwright.command;

import java.util.List;
import org.jointwright.app.LayoutChoice;
import org.jointwright.app.Sides;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;

/** A choice of layout as it is said on the command line. */
final class ChoiceWord {
  private static final String SHORTEST = "shortest";
  private static final String SQUAREST = "squarest";
  private static final String ALONG = "along:";

  private ChoiceWord() {}

  /**
   * The plan with the choice that {@code word} names: in every slab, or, where it is a side, in the
   * slabs that have that side. Another word ends the command.
   */
  static Plan chosen(Plan plan, String word) {
    return switch (word) {
      case SHORTEST -> everywhere(plan, Preference.SHORTEST);
      case SQUAREST -> everywhere(plan, Preference.Overall.SQUAREST);
      default -> {
        if (!word.startsWith(ALONG)) {
          throw new Stop(Outcome.USAGE, Said.WORDS.say("command.joint.noChoice", word));
        }
        yield along(plan, word.substring(ALONG.length()));
      }
    };
  }

  private static Plan everywhere(Plan plan, Preference wanted) {
    return plan.withSlabs(
        plan.slabs().stream()
            .map(s -> s.withJointing(s.jointing().withPreference(wanted)))
            .toList());
  }

  private static Plan along(Plan plan, String side) {
    List<Ref> found = Sides.named(plan, side);
    if (found.isEmpty()) {
      String sides = String.join(", ", Sides.names(plan)).replace('–', '-');
      throw new Stop(Outcome.USAGE, Said.WORDS.say("command.joint.noSide", side, sides));
    }
    Plan chosen = plan;
    for (Ref edge : found) {
      Preference wanted = new Preference.LinedUpWith(edge.index());
      chosen = new SlabEdit.SetPreference(edge.slab(), wanted).applyTo(chosen);
    }
    return chosen;
  }

  /** The word for a layout that is offered. */
  static String of(LayoutChoice choice) {
    return switch (choice.preference()) {
      case Preference.Overall.SHORTEST -> SHORTEST;
      case Preference.Overall.SQUAREST -> SQUAREST;
      case Preference.LinedUpWith lined -> ALONG + choice.side().replace('–', '-');
    };
  }
}
