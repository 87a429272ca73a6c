package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;

/**
 * The layout that is shown: the last good one for each slab, until the next is worked out. A slab
 * that was never laid is shown bare, one that is gone is not shown.
 */
final class Shown {
  private Shown() {}

  static Layout of(Desk desk) {
    Plan now = desk.plan();
    Optional<Layout> last = desk.laying().laid().map(l -> l.layout());
    if (last.isPresent() && last.get().plan().equals(now)) {
      return last.get();
    }
    List<SlabLayout> slabs = new ArrayList<>();
    for (Slab slab : now.slabs()) {
      slabs.add(
          last.flatMap(l -> l.slab(slab.id()))
              .map(old -> dressed(old, slab))
              .orElseGet(() -> bare(slab)));
    }
    return new Layout(now.withSlabs(slabs.stream().map(SlabLayout::slab).toList()), slabs);
  }

  /** The old outline and joints with what is written about the slab now. */
  private static SlabLayout dressed(SlabLayout old, Slab now) {
    boolean isSame =
        old.slab().outline().equals(now.outline()) && old.slab().openings().equals(now.openings());
    if (!isSame) {
      return old;
    }
    Slab slab = now.withLaid(old.slab().joints(), old.slab().boxOuts());
    return new SlabLayout(slab, old.panels(), old.loose());
  }

  private static SlabLayout bare(Slab slab) {
    return new SlabLayout(slab, List.of(), List.of());
  }
}
