package org.jointwright.designer.facts;

import java.util.Locale;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.plan.edit.History;
import org.jointwright.text.Words;

/**
 * What stands in the bar and over the plan.
 *
 * @param job the job's name
 * @param undo what undoing would undo; empty where there is nothing
 * @param redo what could be done again
 * @param kept when the plan was kept, or that it was not
 * @param isKept whether all of it is kept
 * @param step the step's name
 * @param fact what there is to say of it, over the plan
 */
public record HeadFacts(
    String job,
    Optional<String> undo,
    Optional<String> redo,
    String kept,
    boolean isKept,
    String step,
    String fact) {
  /** The facts of a desk. */
  public static HeadFacts of(Desk desk, Words words) {
    History history = desk.history();
    String name = desk.plan().job().name();
    StepFacts step =
        StepFacts.all(desk, words).stream()
            .filter(s -> s.step() == desk.sight().step())
            .findFirst()
            .orElseThrow();
    return new HeadFacts(
        name.isBlank() ? words.say("window.job.unnamed") : name,
        undo(desk, words),
        desk.isHalfDrawn()
            ? Optional.empty()
            : last(history.future()).map(s -> EditNames.of(s, words)),
        kept(desk, words),
        desk.isKept(),
        step.word(),
        fact(desk, step, words));
  }

  /** While an outline is drawn its last side is what undoing takes back. */
  private static Optional<String> undo(Desk desk, Words words) {
    return desk.isHalfDrawn()
        ? Optional.of(words.say("window.did.drawSide"))
        : last(desk.history().past()).map(s -> EditNames.of(s, words));
  }

  private static Optional<History.Step> last(java.util.List<History.Step> steps) {
    return steps.isEmpty() ? Optional.empty() : Optional.of(steps.getLast());
  }

  private static String kept(Desk desk, Words words) {
    if (!desk.isKept()) {
      return words.say("window.bar.notKept");
    }
    if (desk.papers().isOnlyLaid()) {
      return words.say("window.bar.onlyLaid");
    }
    return desk.papers()
        .kept()
        .map(
            t ->
                words.say(
                    "window.bar.kept",
                    String.format(
                        Locale.ROOT, "%d:%02d", (t.getHour() + 11) % 12 + 1, t.getMinute()),
                    words.say(t.getHour() < 12 ? "window.bar.am" : "window.bar.pm")))
        .orElse("");
  }

  private static String fact(Desk desk, StepFacts step, Words words) {
    boolean isJoints = step.step() == org.jointwright.designer.state.Step.JOINTS;
    if (!isJoints || desk.laying().laid().isEmpty()) {
      return desk.plan().slabs().isEmpty() ? "" : step.fact();
    }
    int panels =
        desk.laying().laid().map(Laid::layout).stream()
            .flatMap(l -> l.slabs().stream())
            .mapToInt(s -> s.panels().size())
            .sum();
    return words.say("window.head.joints", panels, step.fact());
  }
}
