package org.jointwright.designer.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.fix.IfLeft;
import org.jointwright.fix.name.Called;
import org.jointwright.joint.Numbering;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/**
 * A finding as the list shows it.
 *
 * @param number its number on the plan
 * @param severity how much it weighs
 * @param text what is wrong, in plain words
 * @param source the rule and where it comes from
 * @param hasMore whether there is more to say of it than its own words, once it is gone to
 */
public record FindingFacts(
    int number, Severity severity, String text, String source, boolean hasMore) {
  /** Every finding, worst first. */
  public static List<FindingFacts> all(Desk desk, Words words) {
    List<FindingFacts> all = new ArrayList<>();
    Called called = Called.in(judged(desk));
    for (Finding f : findings(desk)) {
      String text = text(f, called, words);
      String source = f.sourcesSaid(words::say);
      all.add(
          new FindingFacts(
              all.size() + 1,
              f.severity(),
              text,
              words.say("window.finding.source", f.rule(), words.say(f.nameKey()), source),
              IfLeft.of(f).isPresent()));
    }
    return all;
  }

  /**
   * What some findings say, each in a line: its number, and its first sentence.
   *
   * @param known gives the numbers of a plan’s joints, which take long where there are thousands
   */
  public static List<String> lines(
      Desk desk, List<Integer> numbers, Words words, Function<Plan, Numbering> known) {
    if (numbers.isEmpty()) {
      return List.of();
    }
    Called called = new Called(judged(desk), known.apply(judged(desk)));
    List<Finding> all = findings(desk);
    return numbers.stream()
        .filter(n -> n <= all.size())
        .map(
            n -> words.say("window.finding.line", n, sentence(text(all.get(n - 1), called, words))))
        .toList();
  }

  private static String text(Finding finding, Called called, Words words) {
    return words.say(finding.key(), called.in(finding));
  }

  private static List<Finding> findings(Desk desk) {
    return desk.laying().laid().map(Laid::findings).orElse(List.of());
  }

  /** Its joints have the numbers that the plan shows beside the flags. */
  private static Plan judged(Desk desk) {
    return desk.laying().laid().map(l -> l.layout().plan()).orElse(desk.plan());
  }

  private static String sentence(String text) {
    int end = text.indexOf(". ");
    return end < 0 ? text : text.substring(0, end + 1);
  }

  /**
   * The desk gone to one of the findings that share a flag: the next after the one it is at, round
   * and round.
   */
  public static Desk through(Desk desk, List<Integer> numbers) {
    if (numbers.isEmpty()) {
      return desk;
    }
    int at =
        desk.sight().finding().isEmpty() ? -1 : numbers.indexOf(desk.sight().finding().getAsInt());
    return goTo(desk, numbers.get((at + 1) % numbers.size()));
  }

  /** How many there are of each weight, in words. */
  public static String summary(List<FindingFacts> all, Words words) {
    List<String> parts = new ArrayList<>();
    for (Severity s : Severity.values()) {
      long n = all.stream().filter(f -> f.severity == s).count();
      if (n > 0) {
        parts.add(words.say(key(s), n));
      }
    }
    return String.join(", ", parts);
  }

  /** How many a judgement has of each weight, in words. */
  public static String summary(Judgement judgement, Words words) {
    List<String> parts = new ArrayList<>();
    for (Severity s : Severity.values()) {
      if (!judgement.of(s).isEmpty()) {
        parts.add(words.say(key(s), judgement.of(s).size()));
      }
    }
    return parts.isEmpty() ? words.say("window.finding.none") : String.join(", ", parts);
  }

  private static String key(Severity severity) {
    return switch (severity) {
      case MUST -> "window.finding.musts";
      case SHOULD -> "window.finding.shoulds";
      case NOTE -> "window.finding.notes";
    };
  }

  /** The desk gone to the next finding, or the one before, round and round. */
  public static Desk step(Desk desk, boolean forward) {
    int all = desk.laying().laid().map(Laid::findings).map(List::size).orElse(0);
    if (all == 0) {
      return desk;
    }
    int now = desk.sight().finding().orElse(forward ? 0 : all + 1);
    return goTo(desk, Math.floorMod(now - 1 + (forward ? 1 : -1), all) + 1);
  }

  /** The desk gone to the finding of that number. */
  public static Desk goTo(Desk desk, int number) {
    List<Finding> findings = desk.laying().laid().map(Laid::findings).orElse(List.of());
    if (number < 1 || number > findings.size()) {
      return desk;
    }
    Finding f = findings.get(number - 1);
    boolean isSeen = desk.viewport().clear().holds(f.at());
    Desk there = isSeen ? desk : desk.withSight(s -> s.with(s.viewport().centredOn(f.at()), false));
    Desk picked =
        f.joint()
            .map(j -> there.picking(new org.jointwright.designer.state.Pick.AtJoint(f.slab(), j)))
            .orElse(there.picking(org.jointwright.designer.state.Pick.NOTHING));
    return picked.withSight(s -> s.goneTo(number));
  }
}
