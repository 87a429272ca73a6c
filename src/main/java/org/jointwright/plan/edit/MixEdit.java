package org.jointwright.plan.edit;

import java.util.Optional;
import org.jointwright.plan.Mix;
import org.jointwright.plan.Plan;

/** Sets what concrete is ordered. */
public record MixEdit(Mix mix) implements Edit {
  @Override
  public Plan applyTo(Plan before) {
    return before.withMix(mix);
  }

  @Override
  public Optional<Edit> mergedWith(Edit later) {
    return later instanceof MixEdit ? Optional.of(later) : Optional.empty();
  }
}
