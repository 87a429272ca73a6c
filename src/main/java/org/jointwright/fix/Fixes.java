package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;

/** Finds what can be done about a finding. */
public final class Fixes {
  /** No more than this are offered. */
  public static final int MOST = 3;

  /** No more than this are tried; searches end by count. */
  private static final int MOST_TRIED = 64;

  private static final Map<String, List<Remedy>> BY_RULE =
      Map.ofEntries(
          Map.entry(
              "M1", List.of(new Causes(), new AcrossPanel(), new EvenOut(), new FromCorner())),
          Map.entry(
              "M2",
              List.of(
                  new Causes(), new AcrossPanel(), new EvenOut(), new TakeOut(), new FromCorner())),
          Map.entry(
              "M3", List.of(new Causes(), new FromCorner(), new ThroughCorner(), new RunOn())),
          Map.entry("M4", List.of(new MeetSquare(), new Causes(), new EvenOut(), new TakeOut())),
          Map.entry("M5", List.of(new Causes(), new EvenOut(), new TakeOut())),
          Map.entry("M6", List.of(new Ends(), new Overlaps())),
          Map.entry("M7", List.of(new FillEdge(), new FillBoxOut())),
          Map.entry(
              "M8", List.of(new Causes(), new FromHole(), new FromCorner(), new AcrossPanel())),
          Map.entry("M9", List.of(new PutBack())),
          Map.entry("S1", List.of(new RunOn(), new LineUp(), new GoOn(), new TakeOut())),
          Map.entry("S3", List.of(new EvenOut())),
          Map.entry("S4", List.of(new EvenOut(), new AcrossPanel())),
          Map.entry("S5", List.of(new MeetSquare())),
          Map.entry("S6", List.of(new ToWholeMarks())),
          Map.entry("S2", List.of(new TakeOut())),
          Map.entry("P1", List.of(new StopPour())),
          Map.entry("S10", List.of(new Straighten(), new MeetSquare())),
          Map.entry("M10", List.of(new OutOfZone())),
          Map.entry("M11", List.of(new OffOther())),
          Map.entry("S7", List.of(new FillBetween(), new MeetNeighbour())),
          Map.entry("S8", List.of(new EvenOut(), new MeetSquare(), new TakeOut())),
          Map.entry("N1", List.of(new CutTip())),
          Map.entry("S9", List.of(new Deepen())));

  private Fixes() {}

  /**
   * Whether a finding of one layout is gone from another: none of its rule that weighs as much is
   * at its place.
   *
   * @param before the layout that it was found in
   * @param after the other, of the same plan
   * @param now what the rules found in that
   */
  public static boolean isGone(Finding finding, Layout before, Layout after, Judgement now) {
    SamePlace place = new SamePlace(before, after);
    return now.findings().stream()
        .filter(f -> f.severity().compareTo(finding.severity()) <= 0)
        .noneMatch(f -> place.holds(finding, f));
  }

  /**
   * Up to three fixes of a finding, the worthiest first: each clears it, and brings no finding of
   * its weight or more that was not there, at its place and as large. Empty where none is known.
   *
   * @param asked the plan that was given, with what its user locked
   * @param layout what was laid for it, and judged
   * @param finding one of the findings of {@code layout}
   */
  public static List<Fix> of(Plan asked, Layout layout, Finding finding) {
    return of(asked, layout, finding, f -> true);
  }

  /**
   * The same.
   *
   * @param holds whether a fix that changes a shape still helps once joints are laid for it: asked
   *     of those only that help otherwise, and those that do not hold take no other’s place
   */
  public static List<Fix> of(Plan asked, Layout layout, Finding finding, Predicate<Fix> holds) {
    Judgement judged = Checks.judge(asked, layout);
    Broken broken = new Broken(asked, layout, judged, finding);
    Trial trial = new Trial(asked, layout, judged, finding);
    List<Trial.Helped> helped = new ArrayList<>();
    Set<Plan> seen = new HashSet<>();
    int tried = 0;
    int free = 0;
    for (Remedy remedy : BY_RULE.getOrDefault(finding.rule(), List.of())) {
      for (Fix fix : remedy.proposals(broken)) {
        Plan plan = fix.edit().applyTo(layout.plan());
        if (free < MOST && tried < MOST_TRIED && seen.add(plan) && !plan.equals(layout.plan())) {
          tried++;
          trial
              .of(fix)
              .filter(h -> !h.fix().isOfShape() || holds.test(h.fix()))
              .ifPresent(helped::add);
          free = (int) helped.stream().filter(trial::isFree).count();
        }
      }
    }
    Set<String> said = new HashSet<>();
    return helped.stream()
        .sorted(
            Comparator.comparingLong(Trial.Helped::must)
                .thenComparingLong(Trial.Helped::should)
                .thenComparingLong(Trial.Helped::note))
        .map(Trial.Helped::fix)
        .filter(f -> said.add(f.arguments().toString() + f.key()))
        .limit(MOST)
        .toList();
  }
}
