package org.jointwright.designer.state;

import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** What the hand holds while it drags. */
public sealed interface Hold {
  /**
   * A corner.
   *
   * @param corner which one
   * @param was where it stood
   */
  record HeldCorner(Ref corner, Point was) implements Hold {}

  /**
   * A joint.
   *
   * @param slab its slab
   * @param joint its name before the drag
   * @param was where it ran
   * @param now where it runs
   */
  record HeldJoint(String slab, String joint, Path was, Path now) implements Hold {}

  /** A fixed object. */
  record HeldFixed(String id) implements Hold {}
}
