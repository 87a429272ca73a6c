package org.jointwright.fix;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.judge.Checks;
import org.jointwright.check.line.CrookedJoints;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.History;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The law of fixes, on every case: what is offered clears its finding and breaks nothing else, and
 * undoing it brings the plan back. Counted here by rule, without asking how the fixes compare.
 */
class FixLawTest {
  private static final Path CASES = Path.of("src/test/resources/cases");

  /** The rules that look at whole panels. */
  private static final Set<String> PANELS = Set.of("M1", "M2", "M5", "M8", "S8");

  /** The rules that are asked of what may be, and not of what a fix brings. */
  private static final Set<String> SLOW = Set.of("S2", "C1");

  /** Findings are at one place when they are no farther apart, inches. */
  private static final double SAME_PLACE = 1;

  static Stream<CasePlans> cases() {
    return Stream.of(
            CASES.resolve("broken"),
            CASES.resolve("laid"),
            CASES.resolve("open"),
            Path.of("samples"))
        .flatMap(folder -> CasePlans.in(folder).stream());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyFixClearsItsFindingAndBreaksNothing(CasePlans c) {
    Judgement before = Checks.judge(c.asked(), c.layout());
    for (Finding finding : before.findings()) {
      List<Fix> fixes = Fixes.of(c.asked(), c.layout(), finding);
      assertThat(fixes).hasSizeLessThanOrEqualTo(Fixes.MOST);
      for (Fix fix : fixes) {
        String what = finding.rule() + " at " + finding.at() + ": " + said(fix);
        Plan plan = fix.edit().applyTo(c.layout().plan());
        // The user chose the fix: what it does to a joint that was in its place is as locked.
        Plan asked = c.asked().equals(c.layout().plan()) ? plan : c.asked();
        Judgement after = Checks.judge(asked, Layouts.of(plan));
        assertThat(after.crashed()).as(what).isEmpty();
        assertThat(at(finding, after)).as(what).isLessThan(at(finding, before));
        assertNoWorse(what, excesses(finding, before), excesses(finding, after));
        if (!fix.isOfShape()) {
          assertThat(fix.brings())
              .as(what)
              .containsExactlyInAnyOrderElementsOf(brought(finding, before, after));
        }
        if (finding.severity() != Severity.MUST) {
          assertThat(after.findings()).as(what).hasSizeLessThan(before.findings().size());
          assertThat(crooked(plan)).as(what).isLessThanOrEqualTo(crooked(c.layout().plan()));
          if (joints(plan) == joints(c.layout().plan())) {
            assertThat(Figures.of(asked, Layouts.of(plan)).cost())
                .as("%s makes the joints dearer, feet", what)
                .isLessThanOrEqualTo(Figures.of(c.asked(), c.layout()).cost() + 1);
          }
        }
        assertThat(History.begun(c.layout().plan()).done(fix.edit()).undone().now())
            .as(what)
            .isEqualTo(c.layout().plan());
      }
    }
  }

  /** The rules of lesser weight that find more, but for those that lay and judge by themselves. */
  private static Set<String> brought(Finding finding, Judgement before, Judgement after) {
    Set<String> rules = new java.util.TreeSet<>();
    for (Finding f : after.findings()) {
      boolean isLess = f.severity().compareTo(finding.severity()) > 0;
      long were = before.findings().stream().filter(b -> b.rule().equals(f.rule())).count();
      long are = after.findings().stream().filter(b -> b.rule().equals(f.rule())).count();
      if (isLess && are > were && !SLOW.contains(f.rule()) && !f.rule().equals("M10")) {
        rules.add(f.rule());
      }
    }
    return rules;
  }

  private static int joints(Plan plan) {
    return plan.slabs().stream().mapToInt(s -> s.joints().size()).sum();
  }

  /** How many joints are crooked where none is locked: a lock that a fix sets hides none. */
  private static int crooked(Plan plan) {
    Plan free = plan;
    for (Slab s : plan.slabs()) {
      List<Joint> joints = s.joints().stream().map(j -> j.withLocked(false)).toList();
      free = free.withSlab(s.id(), x -> x.withLaid(joints, x.boxOuts()));
    }
    return Checks.judge(free, Layouts.of(free), List.of(new CrookedJoints())).findings().size();
  }

  private static String said(Fix fix) {
    String said = "";
    for (UnitSystem units : UnitSystem.values()) {
      said = Words.english(units).say(fix.key(), fix.arguments().toArray());
      assertThat(said).isNotBlank().doesNotContain("{");
    }
    return said;
  }

  /** How many findings of the rule, as weighty, are where the finding was. */
  private static long at(Finding finding, Judgement judgement) {
    return judgement.findings().stream()
        .filter(f -> f.rule().equals(finding.rule()) && f.slab().equals(finding.slab()))
        .filter(f -> f.severity().compareTo(finding.severity()) <= 0)
        .filter(
            f ->
                f.subject() instanceof Subject.OnEdge
                        || f.subject() instanceof Subject.OnFixedObject
                    ? f.subject().equals(finding.subject())
                    : f.at().distance(finding.at()) <= SAME_PLACE)
        .count();
  }

  /** By slab, rule and weight, how far each finding is over its limit, the worst first. */
  private static Map<String, List<Double>> excesses(Finding finding, Judgement judgement) {
    Map<String, List<Double>> all = new TreeMap<>();
    for (Finding f : judgement.findings()) {
      if (f.severity().compareTo(finding.severity()) <= 0) {
        double over = Math.abs(f.measured() - f.limit()) / (f.limit() == 0 ? 1 : f.limit());
        all.computeIfAbsent(f.slab() + " " + f.rule() + ":" + f.key(), k -> new ArrayList<>())
            .add(over);
      }
    }
    all.values().forEach(l -> l.sort(java.util.Comparator.reverseOrder()));
    return all;
  }

  /** Of each kind no more and none worse; pieces of a panel may be more if all are fewer. */
  private static void assertNoWorse(
      String what, Map<String, List<Double>> were, Map<String, List<Double>> are) {
    boolean isFewer = count(are) < count(were);
    are.forEach(
        (kind, is) -> {
          List<Double> was = were.get(kind);
          assertThat(was).as("%s brings %s", what, kind).isNotNull();
          if (!isFewer
              || !PANELS.contains(kind.substring(kind.indexOf(' ') + 1, kind.indexOf(':')))) {
            assertThat(is.size())
                .as("%s brings more of %s", what, kind)
                .isLessThanOrEqualTo(was.size());
          }
          for (int i = 0; i < is.size(); i++) {
            double most = was.get(Math.min(i, was.size() - 1));
            double limit = isFewer ? was.getFirst() : most;
            assertThat(is.get(i))
                .as("%s makes %s worse", what, kind)
                .isLessThanOrEqualTo(limit + 1e-3);
          }
        });
  }

  private static int count(Map<String, List<Double>> excesses) {
    return excesses.values().stream().mapToInt(List::size).sum();
  }
}
