package org.jointwright.plan.edit;

import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;

/** An edit that makes two slabs of one, or one of two. */
public sealed interface SplitEdit extends Edit {
  /**
   * Parts a slab along a straight line. The larger part keeps the name; what is in the slab goes
   * with the part that it is in, locked joints too where they lie whole in one part.
   *
   * @param slab the slab's id
   * @param from where the line meets the outline, within half an inch
   * @param to where it meets it again; it crosses neither the outline nor an opening in between
   */
  record Split(String slab, Point from, Point to) implements SplitEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Parting.of(before, slab, from, to);
    }
  }

  /**
   * Makes one slab of two that share an edge or a part of one. It is like the first in all that is
   * not its outline; what is in the second goes with it.
   */
  record Join(String slab, String other) implements SplitEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Uniting.of(before, slab, other)
          .orElseThrow(() -> new IllegalArgumentException(slab + " and " + other + " do not meet"));
    }
  }

  /** Whether two slabs of a plan can be made one. */
  static boolean canJoin(Plan plan, String slab, String other) {
    return !slab.equals(other) && Uniting.of(plan, slab, other).isPresent();
  }
}
