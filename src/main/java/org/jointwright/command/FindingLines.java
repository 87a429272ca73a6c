package org.jointwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jointwright.app.Answer;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.fix.Fix;
import org.jointwright.fix.name.Called;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;

/** What the rules found, in lines of text and in the plan's own measures. */
final class FindingLines {
  /** The rule that tells settings which clash. */
  private static final String CLASH = "C1";

  private final Answer answer;
  private final Words words;
  private final Called called;

  FindingLines(Answer answer) {
    this.answer = answer;
    this.called = Called.in(answer.plan());
    this.words = Words.english(UnitSystem.of(answer.plan().unit()));
  }

  /**
   * The whole report: each slab's size and every finding with the first of its fixes, the last line
   * the sum.
   */
  String report(Function<Finding, List<Fix>> fixes) {
    List<String> lines = new ArrayList<>();
    answer.layout().slabs().forEach(s -> lines.add(slab(s)));
    for (Finding f : answer.findings()) {
      lines.add(line(f));
      fixes.apply(f).stream().findFirst().map(this::line).ifPresent(lines::add);
    }
    lines.add(
        words.say(
            "command.check.sum",
            count(Severity.MUST),
            count(Severity.SHOULD),
            count(Severity.NOTE)));
    return String.join("\n", lines) + "\n";
  }

  /** One line for each finding of a rule that must hold. */
  List<String> broken() {
    return answer.judgement().of(Severity.MUST).stream().map(this::line).toList();
  }

  /**
   * Why slabs break rules that must hold: the settings that clash; where no argument is known, only
   * that no better layout was found.
   */
  List<String> helpless() {
    List<String> lines = new ArrayList<>();
    for (SlabLayout slab : answer.layout().slabs()) {
      List<Finding> own =
          answer.findings().stream().filter(f -> f.slab().equals(slab.slab().id())).toList();
      List<Finding> clashes = own.stream().filter(f -> f.rule().equals(CLASH)).toList();
      clashes.forEach(f -> lines.add(line(f)));
      if (clashes.isEmpty() && own.stream().anyMatch(f -> f.severity() == Severity.MUST)) {
        lines.add(words.say("command.joint.notFound", slab.slab().id()));
      }
    }
    return lines;
  }

  private String slab(SlabLayout slab) {
    return words.say(
        "command.check.slab", slab.slab().id(), slab.panels().size(), slab.joints().size());
  }

  private String line(Finding f) {
    String severity = words.say("check.severity." + f.severity().name().toLowerCase(Locale.ROOT));
    return words.say(
        "command.check.finding",
        f.slab(),
        f.rule(),
        severity.toLowerCase(Locale.ENGLISH),
        words.say(f.key(), called.in(f)),
        f.sourcesSaid(words::say),
        Length.inches(f.at().x()),
        Length.inches(f.at().y()));
  }

  private String line(Fix fix) {
    return words.say("command.check.fix", words.say(fix.key(), called.in(fix.arguments())));
  }

  private int count(Severity severity) {
    return answer.judgement().of(severity).size();
  }
}
