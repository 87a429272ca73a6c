package org.jointwright.plan.edit;

import java.util.Optional;
import org.jointwright.plan.Plan;

/**
 * A change of a plan.
 *
 * <p>An edit that names something the plan does not hold is refused with an {@link
 * IllegalArgumentException}: the window never offers such a one.
 */
public sealed interface Edit
    permits SlabEdit,
        FeatureEdit,
        ZoneEdit,
        FixedEdit,
        JointEdit,
        GivenEdit,
        ThingEdit,
        SplitEdit,
        PourEdit,
        MixEdit,
        PhotoEdit,
        JobEdit,
        BringBack,
        Together,
        Named {
  /** The plan after the change; the one before is left as it is. */
  Plan applyTo(Plan before);

  /**
   * This edit and a later one as a single step, where the user would call them one: the many small
   * moves of one drag, the many keys of one typed value.
   */
  default Optional<Edit> mergedWith(Edit later) {
    return Optional.empty();
  }
}
