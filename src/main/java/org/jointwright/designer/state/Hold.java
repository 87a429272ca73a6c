package org.jointwright.designer.state;

import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.Joint;
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
   * @param pencil where it stands, and what drew it there
   */
  record HeldCorner(Ref corner, Point was, Pencil pencil) implements Hold {}

  /**
   * A joint.
   *
   * @param slab its slab
   * @param number its number before the drag, as text
   * @param was where it ran
   * @param now the joint where it runs
   */
  record HeldJoint(String slab, String number, Path was, Joint now) implements Hold {}

  /** Something marked on a side. */
  record HeldFeature(Pick.AtFeature pick) implements Hold {}

  /**
   * A zone that is kept clear, or an old joint beside the slabs.
   *
   * @param pick which one
   * @param moved how far it has come
   */
  record HeldGround(Pick pick, Point moved) implements Hold {}

  /** A fixed object. */
  record HeldFixed(String id) implements Hold {}
}
