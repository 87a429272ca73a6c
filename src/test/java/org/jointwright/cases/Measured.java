package org.jointwright.cases;

import java.util.List;
import java.util.TreeSet;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;

/**
 * What a judge, who knows nothing of the engine's own score, makes of a layout.
 *
 * @param figures its figures
 * @param broken the rules that must hold and do not, in order
 */
record Measured(Figures figures, List<String> broken) {
  /** The figures of a layout that was laid for this plan. */
  static Measured of(Plan asked, Layout laid) {
    Judgement judgement = Checks.judge(asked, laid);
    if (!judgement.isComplete()) {
      throw new IllegalStateException("rules crashed: " + judgement.crashed());
    }
    TreeSet<String> broken = new TreeSet<>();
    judgement.of(Severity.MUST).forEach(f -> broken.add(f.rule()));
    return new Measured(Figures.of(asked, laid), List.copyOf(broken));
  }

  /** What it costs, feet. */
  double cost() {
    return figures.cost();
  }

  /** Length of contraction joint, feet. */
  double feet() {
    return figures.feet();
  }

  /** Tees, a Y counted half. */
  double tees() {
    return figures.tees() + figures.ys() / 2.0;
  }

  /** Panels, tips left out. */
  int panels() {
    return figures.panels();
  }
}
