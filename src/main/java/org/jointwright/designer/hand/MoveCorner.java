package org.jointwright.designer.hand;

import org.jointwright.designer.sketch.Pencil;
import org.jointwright.designer.state.Attraction;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Extent;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Soundness;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Point;

/**
 * Drags a corner. The joints are laid anew while it moves; where the outline would cross itself the
 * corner stays at the last good place.
 *
 * @param corner which one
 * @param was where it stood
 * @param grip where the hand pressed
 */
record MoveCorner(Ref corner, Point was, Pointer grip) implements Gesture {
  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(new Pick.AtCorner(corner));
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    boolean isMoving = desk.hand().hold().isPresent();
    if (!isMoving && pointer.isClickAt(grip)) {
      return desk;
    }
    Plan plan = desk.plan();
    if (Picks.vertex(plan, corner).isEmpty()) {
      // Undoing while the hand is down may take the corner away.
      return desk;
    }
    Pencil pencil =
        pointer.isFree()
            ? Pencil.free(pointer.plan())
            : Attraction.dragging(plan, corner, desk.viewport().inches(1)).at(pointer.plan());
    SlabEdit.MoveCorner edit = new SlabEdit.MoveCorner(corner, pencil.at());
    if (!Soundness.holds(edit.applyTo(plan), corner.slab())) {
      return desk;
    }
    Desk moved = isMoving ? desk.goingOn(edit) : desk.edited(edit);
    return moved.withHand(InHand.holding(new Hold.HeldCorner(corner, was, pencil)));
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return Extent.inSight(desk.letGo());
  }

  static MoveCorner of(Desk desk, Ref corner, Pointer pointer) {
    return new MoveCorner(corner, Picks.vertex(desk.plan(), corner).orElseThrow(), pointer);
  }
}
