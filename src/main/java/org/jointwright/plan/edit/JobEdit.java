package org.jointwright.plan.edit;

import java.util.Optional;
import org.jointwright.plan.Job;
import org.jointwright.plan.Plan;

/** Sets the job's facts. */
public record JobEdit(Job job) implements Edit {
  @Override
  public Plan applyTo(Plan before) {
    return before.withJob(job);
  }

  @Override
  public Optional<Edit> mergedWith(Edit later) {
    return later instanceof JobEdit ? Optional.of(later) : Optional.empty();
  }
}
