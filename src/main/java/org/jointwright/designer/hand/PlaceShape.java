package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.SetDown;

/**
 * Sets a ready shape down where the hand lets go.
 *
 * @param name what a new slab is called, before its number
 */
record PlaceShape(String name) implements Gesture {
  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return SetDown.lead(desk, pointer);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    return SetDown.lead(desk, pointer);
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return SetDown.place(SetDown.lead(desk, pointer), name);
  }
}
