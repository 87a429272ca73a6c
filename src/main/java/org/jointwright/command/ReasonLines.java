package org.jointwright.command;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.fix.name.Called;
import org.jointwright.fix.name.JointName;
import org.jointwright.joint.Numbering;
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
  private final Called called;

  ReasonLines(Answer answer) {
    this.answer = answer;
    this.words = Words.english(UnitSystem.of(answer.plan().unit()));
    this.called = Called.in(answer.plan());
    this.sentences = ReasonWords.byNumber(answer.plan(), words);
  }

  /**
   * A head line for each joint, and a line for each thing to be said of it.
   *
   * @param names the numbers of the joints that are asked about, or their ids in any slab; all
   *     where empty
   * @throws Stop where no slab has a joint of one of the names
   */
  String of(List<String> names) {
    for (String name : names) {
      if (answer.layout().slabs().stream()
          .noneMatch(s -> s.joints().stream().anyMatch(j -> isCalled(s, j, name)))) {
        throw new Stop(Outcome.USAGE, Said.WORDS.say("command.check.noJoint", name));
      }
    }
    List<Reason> reasons = new ArrayList<>();
    for (SlabLayout slab : answer.layout().slabs()) {
      List<String> wanted =
          slab.joints().stream()
              .filter(j -> names.isEmpty() || names.stream().anyMatch(n -> isCalled(slab, j, n)))
              .map(Joint::id)
              .toList();
      reasons.addAll(answer.reasons(slab.slab().id(), wanted));
    }
    reasons.sort(Comparator.comparingInt(this::place));
    List<String> lines = new ArrayList<>();
    for (Reason r : reasons) {
      lines.add("");
      lines.add(words.say("command.check.whyHere", r.slab(), number(r), r.joint()));
      said(r).forEach(s -> lines.add(words.say("command.check.reason", s)));
    }
    return String.join("\n", lines) + "\n";
  }

  /**
   * Whether a joint is meant by a name: its number, or, where no joint has such a number, its id.
   */
  private boolean isCalled(SlabLayout slab, Joint joint, String name) {
    boolean isNumber = called.numbering().items().stream().anyMatch(i -> name.equals(text(i)));
    return isNumber
        ? called
            .numbering()
            .of(slab.slab().id(), joint)
            .filter(i -> name.equals(text(i)))
            .isPresent()
        : joint.id().equals(name);
  }

  private static String text(Numbering.Item item) {
    return Integer.toString(item.number());
  }

  /** Reasons are told in the order of the joints' numbers, those without one last. */
  private int place(Reason r) {
    return called
        .numbering()
        .of(answer.plan(), r.slab(), r.joint())
        .orElse(called.numbering().items().size() + 1);
  }

  private String number(Reason r) {
    return called.joint(new JointName(r.slab(), r.joint()));
  }

  private List<String> said(Reason reason) {
    List<String> said = new ArrayList<>(sentences.origins(reason));
    said.addAll(sentences.without(reason));
    sentences.rule(reason).ifPresent(said::add);
    return said;
  }
}
