package org.jointwright.designer.state;

import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Ring;
import org.jointwright.shape.SelfCrossing;
import org.jointwright.shape.Touching;

/** Whether an outline bounds a slab at all. */
public final class Soundness {
  private Soundness() {}

  /** Whether it runs counter-clockwise round an area of a slab's size and never crosses itself. */
  public static boolean isSound(Outline outline) {
    Ring ring = outline.ring();
    return bounds(ring)
        && !Sizes.isTooSmall(ring)
        && !Sizes.isTooLarge(ring)
        && ring.edges().stream().allMatch(e -> e.length() >= Sizes.CLEAR);
  }

  /**
   * Whether a slab is sound: its outline, its openings, and that these lie inside, clear of its
   * edge and of each other.
   */
  public static boolean holds(Plan plan, String slabId) {
    Optional<Slab> found = plan.slab(slabId);
    return found.isPresent() && holds(found.get());
  }

  /** The same of a slab that stands in no plan yet. */
  static boolean isSlab(Slab slab) {
    return holds(slab);
  }

  private static boolean holds(Slab slab) {
    Ring outer = slab.outline().ring();
    List<Ring> openings = slab.openings().stream().map(o -> o.outline().ring()).toList();
    for (int i = 0; i < openings.size(); i++) {
      Ring opening = openings.get(i);
      boolean isClear =
          openings.subList(0, i).stream()
              .noneMatch(o -> Touching.orHolding(o, opening, Sizes.CLEAR));
      if (!isClear
          || !bounds(opening)
          || !outer.contains(opening.vertices().getFirst())
          || Touching.is(outer, opening, Sizes.CLEAR)) {
        return false;
      }
    }
    // Sides shorter than one would draw them are not refused: they may have come with a file.
    return bounds(outer) && !Sizes.isTooSmall(outer) && !Sizes.isTooLarge(outer);
  }

  /** Whether a ring runs round an area and never crosses itself, as a file is read. */
  private static boolean bounds(Ring ring) {
    return ring.signedArea() > 0
        && ring.edges().stream().allMatch(e -> e.length() > Sizes.SAME)
        && SelfCrossing.of(ring, Sizes.SAME).isEmpty();
  }
}
