package org.jointwright.reason.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Numbering;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.reason.LikelyCrack;
import org.jointwright.reason.Origin;
import org.jointwright.reason.Reason;
import org.jointwright.reason.Without;
import org.jointwright.text.Words;

/** Says why a joint is where it is, in plain sentences and in the reader's measures. */
public final class ReasonWords {
  private final Plan plan;
  private final Words words;
  private final JointName joints;
  private final Lettering lettering;

  private ReasonWords(Plan plan, Words words, JointName joints) {
    this.plan = plan;
    this.words = words;
    this.joints = joints;
    lettering = Lettering.of(plan);
  }

  /**
   * Ready to speak of the joints of a plan by the numbers that they have on it and on its sheets.
   */
  public static ReasonWords byNumber(Plan plan, Words words) {
    Numbering numbering = Numbering.of(plan);
    return new ReasonWords(
        plan,
        words,
        (slab, joint) ->
            numbering
                .of(plan, slab, joint)
                .map(n -> words.say("reason.line.joint", n.toString()))
                .orElseGet(() -> words.say("reason.line.someJoint")));
  }

  /** One sentence for each thing that a joint takes its place from, the weightiest first. */
  public List<String> origins(Reason reason) {
    return reason.origins().stream()
        .filter(o -> isNews(reason, o))
        .map(o -> origin(reason, o))
        .distinct()
        .toList();
  }

  /** Whether it tells more than that a line goes on in itself: its pieces share a number. */
  public boolean isNews(Reason reason, Origin origin) {
    return !(origin instanceof Origin.GoesOn o)
        || !joints.of(reason.slab(), o.joint()).equals(joints.of(reason.slab(), reason.joint()));
  }

  /** The sentence for one of them. */
  public String origin(Reason reason, Origin origin) {
    return new OriginWords(words, lines(reason)).say(origin);
  }

  /**
   * What would be without it: the rule that would break first, or that none would. Nothing where
   * two slabs meet: the concrete stops there, and nobody can leave that out.
   */
  public List<String> without(Reason reason) {
    List<String> said = new ArrayList<>();
    boolean slabsMeet = reason.origins().stream().anyMatch(o -> o instanceof Origin.SlabsMeet);
    if (slabsMeet && reason.without().breaksNothing()) {
      return said;
    }
    WithoutWords alone = without(reason, "reason.withoutIt");
    said.addAll(alone.say(reason.without()));
    Optional<Without> line = reason.withoutLine();
    if (reason.without().breaksNothing() && line.filter(w -> !w.breaksNothing()).isPresent()) {
      WithoutWords whole = without(reason, "reason.withoutLine");
      said.addAll(whole.say(line.get()));
    }
    return said;
  }

  /** What one finding would be, as a sentence. */
  public String broken(Reason reason, Finding finding) {
    return without(reason, "reason.withoutIt").say(finding);
  }

  /** What is said beside the dashed line of a likely crack; empty where none is likely. */
  public Optional<String> crack(Reason reason) {
    return reason.cracks().stream().findFirst().map(LikelyCrack::degrees).map(this::crack);
  }

  private String crack(double degrees) {
    return words.say("reason.crack", degrees);
  }

  /** The rule that would break first, its name, and where it comes from. */
  public Optional<String> rule(Reason reason) {
    return first(reason)
        .map(f -> words.say("reason.rule", f.rule(), name(f), f.sourcesSaid(words::say)));
  }

  /** The break that weighs most, of the joint alone or of its whole line. */
  private static Optional<Finding> first(Reason reason) {
    return reason.without().breaks().stream()
        .findFirst()
        .or(() -> reason.withoutLine().flatMap(w -> w.breaks().stream().findFirst()));
  }

  private String name(Finding finding) {
    return Checks.ALL.stream()
        .filter(c -> c.rule().equals(finding.rule()))
        .findFirst()
        .map(Check::nameKey)
        .map(k -> words.say(k).toLowerCase(Locale.ENGLISH))
        .orElse("");
  }

  private WithoutWords without(Reason reason, String start) {
    return new WithoutWords(words, lines(reason), reason.origins(), start);
  }

  private LineNames lines(Reason reason) {
    return new LineNames(plan, reason.slab(), lettering, words, joints);
  }
}
