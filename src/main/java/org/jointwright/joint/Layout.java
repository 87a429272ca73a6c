package org.jointwright.joint;

import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;

/**
 * A plan and the panels its joints cut.
 *
 * @param plan the plan, joints and box-outs in it
 * @param slabs one for each slab of the plan, in its order
 */
public record Layout(Plan plan, List<SlabLayout> slabs) {
  /** Copies the list. */
  public Layout {
    slabs = List.copyOf(slabs);
  }

  /** The layout of the slab of that name. */
  public Optional<SlabLayout> slab(String id) {
    return slabs.stream().filter(s -> s.slab().id().equals(id)).findFirst();
  }
}
