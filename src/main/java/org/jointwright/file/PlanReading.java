package org.jointwright.file;

import java.util.List;
import org.jointwright.plan.Plan;

/** What reading a plan file came to. */
public sealed interface PlanReading {
  /**
   * A plan.
   *
   * @param plan the plan
   * @param repairs what was mended on the way
   * @param isInSheet whether it stood inside a printed sheet, which must not be written over
   */
  record ReadPlan(Plan plan, List<Remark> repairs, boolean isInSheet) implements PlanReading {
    /** A plan out of a file of its own. */
    public ReadPlan(Plan plan, List<Remark> repairs) {
      this(plan, repairs, false);
    }

    /** Copies the list. */
    public ReadPlan {
      repairs = List.copyOf(repairs);
    }
  }

  /**
   * No plan.
   *
   * @param problems what must be put right first, one at least
   */
  record Refused(List<Remark> problems) implements PlanReading {
    /** Copies the list and refuses an empty one. */
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("nothing is refused without a reason");
      }
    }
  }
}
