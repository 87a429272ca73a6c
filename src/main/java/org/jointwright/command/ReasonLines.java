package org.jointwright.command;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Joint;
import org.jointwright.reason.Reason;
import org.jointwright.reason.words.ReasonWords;
import org.jointwright.text.Words;

/** Why joints are where they are, in lines of text and in the plan's own measures. */
final class ReasonLines {
  private final Answer answer;
  private final Words words;
  private final ReasonWords sentences;

  ReasonLines(Answer answer) {
    this.answer = answer;
    this.words = Words.english(UnitSystem.of(answer.plan().unit()));
    this.sentences = ReasonWords.byId(answer.plan(), words);
  }

  /**
   * A head line for each joint, and a line for each thing to be said of it.
   *
   * @param names the ids of the joints that are asked about, in any slab; all where empty
   * @throws Stop where no slab has a joint of one of the names
   */
  String of(List<String> names) {
    for (String name : names) {
      if (answer.layout().slabs().stream().noneMatch(s -> has(s, name))) {
        throw new Stop(Outcome.USAGE, Said.WORDS.say("command.check.noJoint", name));
      }
    }
    List<String> lines = new ArrayList<>();
    for (SlabLayout slab : answer.layout().slabs()) {
      List<String> wanted =
          slab.joints().stream()
              .map(Joint::id)
              .filter(id -> names.isEmpty() || names.contains(id))
              .toList();
      for (Reason r : answer.reasons(slab.slab().id(), wanted)) {
        lines.add("");
        lines.add(words.say("command.check.whyHere", r.slab(), r.joint()));
        said(r).forEach(s -> lines.add(words.say("command.check.reason", s)));
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static boolean has(SlabLayout slab, String name) {
    return slab.joints().stream().anyMatch(j -> j.id().equals(name));
  }

  private List<String> said(Reason reason) {
    List<String> said = new ArrayList<>(sentences.origins(reason));
    said.addAll(sentences.without(reason));
    sentences.rule(reason).ifPresent(said::add);
    return said;
  }
}
