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
 * @param isFirst whether it was found with little effort, so that a better one follows
 */
public record Laid(
    long generation, Plan asked, Layout layout, Judgement judgement, boolean isFirst) {
  /** The answer that stays. */
  public Laid(long generation, Plan asked, Layout layout, Judgement judgement) {
    this(generation, asked, layout, judgement, false);
  }

  /** The same, shown until a better one is there. */
  public Laid asFirst() {
    return new Laid(generation, asked, layout, judgement, true);
  }

  /** The same, with no better one to follow. */
  Laid forGood() {
    return new Laid(generation, asked, layout, judgement);
  }

  /** Whether it answers {@code wish} and no better answer follows. */
  public boolean settles(Wish wish) {
    return !isFirst && generation == wish.generation();
  }

  /** Whether {@code other} is newer, or is the better answer to the same wish. */
  boolean isBehind(Laid other) {
    return generation == other.generation
        ? isFirst && !other.isFirst
        : generation < other.generation;
  }

  /** The findings in the order of their numbers: worst first, then as the checks give them. */
  public List<Finding> findings() {
    return judgement.findings().stream()
        .sorted(java.util.Comparator.comparing(Finding::severity))
        .toList();
  }
}
