package org.jointwright.designer.pane;

import java.util.List;
import java.util.stream.Collectors;
import org.jointwright.designer.canvas.LiveMarks;
import org.jointwright.designer.facts.Facts;
import org.jointwright.designer.facts.FactsOf;
import org.jointwright.designer.facts.HeadFacts;
import org.jointwright.designer.facts.Row;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.text.Words;

/** The paper in words, for a screen reader: the sentence being typed, or what is picked. */
final class PlanSpoken {
  private PlanSpoken() {}

  static String of(Desk desk, Board board) {
    return LiveMarks.spoken(desk, board.words(), board.vocabulary())
        .orElseGet(() -> plan(desk, board.words()));
  }

  private static String plan(Desk desk, Words words) {
    String whole = words.say("window.plan.spoken", desk.plan().slabs().size());
    HeadFacts head = HeadFacts.of(desk, words);
    String step = head.fact().isEmpty() ? head.step() : head.step() + ", " + head.fact();
    if (desk.picked() instanceof Pick.Nothing) {
      return words.say("window.plan.spokenStep", whole, step);
    }
    Facts facts = FactsOf.desk(desk, words);
    String rows = facts.rows().stream().map(r -> row(r, words)).collect(Collectors.joining(". "));
    String notes = facts.notes().stream().map(Facts.Note::text).collect(Collectors.joining(" "));
    return List.of(
            words.say("window.plan.spokenPick", facts.title(), facts.kind()), rows, notes, whole)
        .stream()
        .filter(t -> !t.isBlank())
        .collect(Collectors.joining(". "));
  }

  /** A fact as it is read out: what it is called, and what it is. */
  static String row(Row row, Words words) {
    return switch (row) {
      case Row.Shown s -> words.say("window.row.spoken", s.label(), s.value());
      case Row.Typed t -> words.say("window.row.spoken", t.label(), t.value());
      case Row.Choice c -> words.say("window.row.spoken", c.label(), c.options().get(c.chosen()));
      case Row.Tick t ->
          words.say(
              "window.row.spoken",
              t.label(),
              words.say(t.isOn() ? "window.row.on" : "window.row.off"));
    };
  }
}
