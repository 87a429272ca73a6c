package org.jointwright.designer.state;

import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;

/** Whether an outline bounds a slab at all. */
public final class Soundness {
  private Soundness() {}

  /** Whether it runs counter-clockwise round an area of a slab's size and never crosses itself. */
  public static boolean isSound(Outline outline) {
    Ring ring = outline.ring();
    return ring.signedArea() > Sizes.SMALLEST && !Sizes.isTooLarge(ring) && !crosses(ring.edges());
  }

  /** Whether a slab is sound: its outline, its openings, and that they lie inside. */
  public static boolean holds(Plan plan, String slabId) {
    Optional<Slab> found = plan.slab(slabId);
    return found.isPresent() && holds(found.get());
  }

  private static boolean holds(Slab slab) {
    Ring outer = slab.outline().ring();
    for (Opening o : slab.openings()) {
      boolean isInside = o.outline().vertices().stream().allMatch(v -> outer.contains(v.at()));
      if (!isInside || !isSound(o.outline())) {
        return false;
      }
    }
    return isSound(slab.outline());
  }

  private static boolean crosses(List<Edge> edges) {
    int n = edges.size();
    for (int i = 0; i < n; i++) {
      if (edges.get(i).length() < 0.5) {
        return true;
      }
      for (int j = i + 2; j < n; j++) {
        boolean areNeighbours = i == 0 && j == n - 1;
        if (!areNeighbours && !Crossing.of(edges.get(i), edges.get(j)).isEmpty()) {
          return true;
        }
      }
    }
    return false;
  }
}
