package org.jointwright.designer.state;

import java.util.List;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;

/**
 * What was laid last, and how it was judged.
 *
 * @param generation the wish that it answers
 * @param asked the plan that was to be laid or judged
 * @param layout the layout
 * @param judgement what the checks found in it
 */
public record Laid(long generation, Plan asked, Layout layout, Judgement judgement) {
  /** The findings in the order of their numbers: worst first, then as the checks give them. */
  public List<Finding> findings() {
    return judgement.findings().stream()
        .sorted(java.util.Comparator.comparing(Finding::severity))
        .toList();
  }
}
