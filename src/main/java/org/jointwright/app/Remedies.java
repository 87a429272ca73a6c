package org.jointwright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.fix.Fix;
import org.jointwright.fix.Fixes;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.Together;

/**
 * What can be done about the findings of a layout: small changes first, and where none helps
 * against a broken rule, joints laid anew. One for each layout: what was laid is kept for its next
 * finding. Not for several threads at once.
 */
public final class Remedies {
  private final Plan asked;
  private final Layout layout;
  private final Judgement judgement;
  private final ThroughObject through;
  private Optional<Layout> anew = Optional.empty();
  private Optional<Layout> unlocked = Optional.empty();

  /**
   * For a layout.
   *
   * @param asked the plan that was given, with what its user locked
   * @param layout what was laid for it
   * @param judgement what the rules found in it
   */
  public Remedies(Plan asked, Layout layout, Judgement judgement) {
    this.asked = asked;
    this.layout = layout;
    this.judgement = judgement;
    this.through = new ThroughObject(asked, layout, judgement, Remedies::lay);
  }

  /**
   * Up to three fixes of a finding, the worthiest first; empty where nothing is known that helps.
   * Laying anew is offered for what must hold only: fewer such findings of the rule are on the slab
   * after it, and more of none. Where nothing else is known beside a fixed object, a line may be
   * run through it: there is less to find in all then.
   */
  public List<Fix> of(Finding finding) {
    return of(finding, () -> true);
  }

  /**
   * The same; what takes laying anew is left out once {@code goOn} says no.
   *
   * @param goOn asked again and again, by the thread that looks for them
   */
  public List<Fix> of(Finding finding, BooleanSupplier goOn) {
    List<Fix> fixes = Fixes.of(asked, layout, finding, f -> holds(finding, f, goOn));
    if (fixes.isEmpty() && finding.severity() == Severity.MUST) {
      fixes = laidAnew(finding, goOn);
    }
    return fixes.isEmpty() && finding.severity() != Severity.NOTE
        ? through.of(finding, goOn).stream().toList()
        : fixes;
  }

  private List<Fix> laidAnew(Finding finding, BooleanSupplier goOn) {
    String slab = finding.slab();
    if (anew.isEmpty()) {
      anew = LayoutEngine.lay(layout.plan(), goOn);
    }
    if (anew.isEmpty()) {
      return List.of();
    }
    Optional<Fix> fix =
        fewer("fix.layAnew.slab", finding, lay(anew.get(), slab))
            .or(() -> fewer("fix.layAnew.all", finding, lay(anew.get())));
    if (fix.isEmpty() && isLocked(slab)) {
      if (unlocked.isEmpty()) {
        unlocked = LayoutEngine.lay(layout.plan().withSlab(slab, Remedies::unlocked), goOn);
      }
      fix = unlocked.flatMap(l -> fewer("fix.layAnew.unlocked", finding, lay(l, slab)));
    }
    return fix.stream().toList();
  }

  private boolean isLocked(String slab) {
    return layout.plan().slab(slab).stream().anyMatch(s -> !s.lockedJoints().isEmpty());
  }

  private static Slab unlocked(Slab slab) {
    List<Joint> free = slab.joints().stream().map(j -> j.withLocked(false)).toList();
    return slab.withLaid(free, slab.boxOuts());
  }

  private static Edit lay(Layout laid, String slab) {
    return laid.slab(slab)
        .map(s -> new JointEdit.Lay(slab, s.joints(), s.boxOuts()))
        .orElseThrow(() -> new IllegalArgumentException("no slab " + slab));
  }

  private static Edit lay(Layout laid) {
    List<Edit> all = new ArrayList<>();
    laid.slabs().forEach(s -> all.add(lay(laid, s.slab().id())));
    return new Together(all);
  }

  private Optional<Fix> fewer(String key, Finding finding, Edit edit) {
    String slab = finding.slab();
    Plan plan = edit.applyTo(layout.plan());
    return isFewer(finding, plan, Layouts.of(plan))
        ? Optional.of(Fix.of(key, "fix.did.layAnew", List.of(slab), edit))
        : Optional.empty();
  }

  /** Whether what changes a slab's shape, or its place, holds once its joints are laid. */
  private boolean holds(Finding finding, Fix fix, BooleanSupplier goOn) {
    Plan plan = fix.edit().applyTo(layout.plan());
    return LayoutEngine.relay(layout, plan, goOn)
        .filter(l -> isFewer(finding, plan, l))
        .isPresent();
  }

  /** Whether a layout has fewer findings of the rule on the slab, and more of none that must. */
  private boolean isFewer(Finding finding, Plan plan, Layout laid) {
    String slab = finding.slab();
    String rule = finding.rule();
    Judgement now = Checks.judge(plan, laid);
    return now.isComplete()
        && count(now, slab, rule) < count(judgement, slab, rule)
        && now.of(Severity.MUST).stream()
            .allMatch(f -> count(now, f.slab(), f.rule()) <= count(judgement, f.slab(), f.rule()));
  }

  private static long count(Judgement judgement, String slab, String rule) {
    return judgement.of(Severity.MUST).stream()
        .filter(f -> f.slab().equals(slab) && f.rule().equals(rule))
        .count();
  }
}
