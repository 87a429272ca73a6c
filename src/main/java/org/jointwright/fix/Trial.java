package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.judge.Checks;
import org.jointwright.check.line.CrookedJoints;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;

/** Does what is proposed on a copy of the plan and has it judged. */
final class Trial {
  /** Rules that lay and judge again themselves: asked last, and only where they weigh enough. */
  private static final Set<String> SLOW = Set.of("S2", "C1");

  /**
   * The rule of zones kept clear: always weighs. What a fix lays is locked, and what is locked
   * there is only noted, though it was the fix and not the user who put it there.
   */
  private static final String KEPT_CLEAR = "M10";

  /** The rules that look at outlines alone: all that can be said where joints are due anew. */
  private static final Set<String> OF_OUTLINES = Set.of("M11");

  /** What lays joints elsewhere may add so much to their cost, feet: less is no cost. */
  private static final double NO_COST = 1;

  private static final Check CROOKED = new CrookedJoints();

  private final Plan asked;
  private final Layout before;
  private final Finding finding;
  private final Judgement judged;

  Trial(Plan asked, Layout before, Judgement judged, Finding finding) {
    this.asked = asked;
    this.before = before;
    this.finding = finding;
    this.judged = judged;
  }

  /**
   * A fix that helps.
   *
   * @param fix the fix
   * @param plan the plan after it
   * @param must how many rules that must hold are broken then
   * @param should how many that should
   * @param note how many notes there are
   */
  record Helped(Fix fix, Plan plan, long must, long should, long note) {}

  /** Whether a fix that helps costs nothing elsewhere. */
  boolean isFree(Helped helped) {
    Judgement were = new Judgement(before(false), List.of());
    return helped.should() <= count(were, Severity.SHOULD)
        && helped.note() <= count(were, Severity.NOTE);
  }

  /** What comes of a fix, if it clears its finding and breaks nothing else. */
  Optional<Helped> of(Fix fix) {
    Plan plan = fix.edit().applyTo(before.plan());
    Layout after = Layouts.of(plan);
    if (fix.isOfShape()) {
      return ofShape(fix, after);
    }
    Plan wanted = askedAfter(plan);
    Judgement now = Checks.judge(wanted, after, rules(false));
    boolean isHelp = isSound(after, now, before(false));
    if (isHelp && finding.severity() != Severity.MUST) {
      Judgement slow = Checks.judge(wanted, after, rules(true));
      isHelp = isSound(after, slow, before(true)) && isWorthIt(wanted, after, now, slow);
    }
    return isHelp
        ? Optional.of(
            new Helped(
                fix.bringing(brought(now)),
                plan,
                count(now, Severity.MUST),
                count(now, Severity.SHOULD),
                count(now, Severity.NOTE)))
        : Optional.empty();
  }

  /**
   * The same of a fix that changes the shape of a slab or where it lies: its joints, and those of
   * its neighbours, are laid anew then, so that how they stand before that says nothing.
   */
  private Optional<Helped> ofShape(Fix fix, Layout after) {
    List<Check> rules = Checks.ALL.stream().filter(c -> OF_OUTLINES.contains(c.rule())).toList();
    List<Finding> were =
        judged.findings().stream().filter(f -> OF_OUTLINES.contains(f.rule())).toList();
    Judgement now = Checks.judge(after.plan(), after, rules);
    return isSound(after, now, were)
        ? Optional.of(
            new Helped(
                fix,
                after.plan(),
                count(now, Severity.MUST),
                count(now, Severity.SHOULD),
                count(now, Severity.NOTE)))
        : Optional.empty();
  }

  /**
   * Whether there is less to find in all, no joint has become crooked and none dearer. What need
   * not be mended is left as it is rather than made up for elsewhere.
   */
  private boolean isWorthIt(Plan wanted, Layout after, Judgement now, Judgement slow) {
    int found = now.findings().size() + slow.findings().size();
    return found < judged.findings().size()
        && crooked(wanted, after.plan()) <= crooked(asked, before.plan())
        && (joints(after.plan()) != joints(before.plan())
            || Figures.of(wanted, after).cost() <= Figures.of(asked, before).cost() + NO_COST);
  }

  /**
   * How many joints are crooked. What the fix lays is locked, and what is locked is not asked how
   * it runs: here it is taken as free, for it was not the user who wanted it so.
   */
  private long crooked(Plan wanted, Plan plan) {
    Plan free = plan;
    for (Slab slab : plan.slabs()) {
      List<Joint> joints =
          slab.joints().stream()
              .map(j -> stood(slab.id(), j).isPresent() ? j : j.withLocked(false))
              .toList();
      free = free.withSlab(slab.id(), s -> s.withLaid(joints, s.boxOuts()));
    }
    return Checks.judge(wanted, Layouts.of(free), List.of(CROOKED)).findings().size();
  }

  /** The joint as it was before the fix, if it ran there and was as locked. */
  private Optional<Joint> stood(String slab, Joint joint) {
    return joint(before.plan(), slab, joint.id())
        .filter(b -> b.path().equals(joint.path()) && b.locked() == joint.locked());
  }

  private static long joints(Plan plan) {
    return plan.slabs().stream().mapToLong(s -> s.joints().size()).sum();
  }

  private static List<Check> rules(boolean slow) {
    return Checks.ALL.stream().filter(c -> SLOW.contains(c.rule()) == slow).toList();
  }

  /** What some of the rules found before. */
  private List<Finding> before(boolean slow) {
    return judged.findings().stream().filter(f -> SLOW.contains(f.rule()) == slow).toList();
  }

  /** Whether some of the rules find less, or as much where the finding is another rule's. */
  private boolean isSound(Layout after, Judgement now, List<Finding> were) {
    boolean isOwn = were.stream().anyMatch(f -> f.rule().equals(finding.rule()));
    return now.crashed().size() <= judged.crashed().size()
        && (!isOwn || clears(after, now, were))
        && breaksNothing(after, now, were);
  }

  /**
   * The rules that weigh less than the finding and find more than before, the weightiest first:
   * they stop no fix, but whoever takes it is told.
   */
  private List<String> brought(Judgement now) {
    List<Finding> were = before(false);
    return now.findings().stream()
        .filter(f -> !weighs(f))
        .sorted(Comparator.comparing(Finding::severity))
        .map(Finding::rule)
        .distinct()
        .filter(r -> of(now.findings(), r) > of(were, r))
        .toList();
  }

  private static long of(List<Finding> findings, String rule) {
    return findings.stream().filter(f -> f.rule().equals(rule)).count();
  }

  private static long count(Judgement judgement, Severity severity) {
    return judgement.of(severity).size();
  }

  /** What the user asked for, with what the fix says of locked joints that stood in their place. */
  private Plan askedAfter(Plan plan) {
    Plan all = asked;
    for (Slab slab : asked.slabs()) {
      List<Joint> joints = new ArrayList<>();
      for (Joint j : slab.joints()) {
        Optional<Joint> stood = joint(before.plan(), slab.id(), j.id());
        boolean inPlace = stood.filter(s -> s.path().equals(j.path())).isPresent();
        if (!j.locked() || !inPlace) {
          joints.add(j);
        } else {
          joint(plan, slab.id(), j.id()).ifPresent(s -> joints.add(j.withPath(s.path())));
        }
      }
      all = all.withSlab(slab.id(), s -> s.withLaid(joints, s.boxOuts()));
    }
    return all;
  }

  private static Optional<Joint> joint(Plan plan, String slab, String id) {
    return plan.slab(slab).stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.id().equals(id))
        .findFirst();
  }

  private boolean weighs(Finding f) {
    return f.severity().compareTo(finding.severity()) <= 0 || f.rule().equals(KEPT_CLEAR);
  }

  private boolean clears(Layout after, Judgement now, List<Finding> were) {
    return isLess(after, now, were, false) && isLess(after, now, were, true);
  }

  /** Whether fewer findings are at the place of the finding: of its rule, or of its very words. */
  private boolean isLess(Layout after, Judgement now, List<Finding> were, boolean sameKey) {
    return at(after, now.findings(), sameKey) < at(before, were, sameKey);
  }

  private long at(Layout layout, List<Finding> findings, boolean sameKey) {
    SamePlace place = new SamePlace(before, layout);
    return findings.stream()
        .filter(f -> weighs(f) && place.holds(finding, f))
        .filter(f -> !sameKey || f.key().equals(finding.key()))
        .count();
  }

  /**
   * Whether every finding that weighs as much was there before, at its place, and no smaller. Of a
   * panel that was cut several pieces may still break what it broke, if there is less to find in
   * all.
   */
  private boolean breaksNothing(Layout after, Judgement now, List<Finding> all) {
    SamePlace place = new SamePlace(before, after);
    List<Finding> were = all.stream().filter(this::weighs).toList();
    List<Finding> are = now.findings().stream().filter(this::weighs).toList();
    Set<Integer> free = new LinkedHashSet<>();
    for (int i = 0; i < were.size(); i++) {
      free.add(i);
    }
    boolean isInPieces = false;
    for (Finding f : are) {
      Optional<Integer> old =
          free.stream()
              .filter(i -> place.isNoWorse(were.get(i), f))
              .min(Comparator.comparingDouble(i -> were.get(i).at().distance(f.at())));
      if (old.isPresent()) {
        free.remove(old.get());
      } else if (were.stream().anyMatch(b -> place.isPiece(b, f))) {
        isInPieces = true;
      } else {
        return false;
      }
    }
    return !isInPieces || are.size() < were.size();
  }
}
