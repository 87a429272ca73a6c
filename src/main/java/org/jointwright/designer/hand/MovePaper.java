package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Viewport;
import org.jointwright.shape.Point;

/**
 * Pushes the paper about.
 *
 * @param grip the place on the paper where the hand pressed
 * @param before how the plan lay then
 */
record MovePaper(Point grip, Viewport before) implements Gesture {
  static MovePaper at(Desk desk, Pointer pointer) {
    return new MovePaper(pointer.paper(), desk.viewport());
  }

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk;
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    Point by = pointer.paper().minus(grip);
    return desk.withSight(s -> s.with(before.pushed(by.x(), by.y()), false));
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return desk;
  }
}
