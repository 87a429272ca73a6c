package org.jointwright.plan.edit;

import java.util.List;
import org.jointwright.plan.Plan;

/** Several edits as one step. */
public record Together(List<Edit> edits) implements Edit {
  /** Copies the list. */
  public Together {
    edits = List.copyOf(edits);
  }

  @Override
  public Plan applyTo(Plan before) {
    Plan plan = before;
    for (Edit e : edits) {
      plan = e.applyTo(plan);
    }
    return plan;
  }
}
