package org.jointwright.designer.hand;

import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.Photo;
import org.jointwright.plan.edit.PhotoEdit;
import org.jointwright.shape.Point;

/**
 * Drags the photo beneath. A click on it puts it down, so that the plan can be drawn over it.
 *
 * @param grip where the hand pressed
 */
record MovePhoto(Pointer grip) implements Gesture {
  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk;
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    Optional<Point> moved = moved(desk);
    // Undoing while the hand is down may take it away.
    Optional<Photo> photo = desk.plan().photo();
    if (photo.isEmpty() || (moved.isEmpty() && pointer.isClickAt(grip))) {
      return desk;
    }
    Point by = pointer.plan().minus(grip.plan());
    Point more = by.minus(moved.orElse(new Point(0, 0)));
    PhotoEdit edit = PhotoEdit.of(photo.get().movedBy(more));
    Desk after = moved.isPresent() ? desk.goingOnOnly(edit) : desk.editedOnly(edit);
    Hold hold = new Hold.HeldGround(new Pick.AtPhoto(), by);
    return after.picking(new Pick.AtPhoto()).withHand(InHand.holding(hold));
  }

  private static Optional<Point> moved(Desk desk) {
    return desk.hand().held(Hold.HeldGround.class).map(Hold.HeldGround::moved);
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return moved(desk).isPresent() ? desk.letGo() : desk.picking(Pick.NOTHING);
  }
}
