package org.jointwright.plan.edit;

import org.jointwright.plan.Plan;

/** Work that was left without being saved comes back in place of what the file holds. */
public record BringBack(Plan work) implements Edit {
  @Override
  public Plan applyTo(Plan before) {
    return work;
  }
}
