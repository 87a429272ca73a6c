package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pointer;

/**
 * Sets down the next corner of an outline, where the hand lets go: pressing and dragging a side
 * works as well as clicking both its ends.
 *
 * @param name what a new slab is called, before its number
 */
record DrawEdge(String name) implements Gesture {
  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return Drafting.lead(desk, pointer);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    return Drafting.lead(desk, pointer);
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return Drafting.click(desk, pointer, name);
  }
}
