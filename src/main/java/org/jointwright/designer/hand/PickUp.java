package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;

/**
 * Picks what lies under the hand; moving on does nothing.
 *
 * @param pick what lies there
 */
record PickUp(Pick pick) implements Gesture {
  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(pick);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    return desk;
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return desk;
  }
}
