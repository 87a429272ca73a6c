package org.jointwright.plan.edit;

import java.util.Optional;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Pour;

/** Sets how much is poured at a time. */
public record PourEdit(Pour pour) implements Edit {
  @Override
  public Plan applyTo(Plan before) {
    return before.withPour(pour);
  }

  @Override
  public Optional<Edit> mergedWith(Edit later) {
    return later instanceof PourEdit ? Optional.of(later) : Optional.empty();
  }
}
