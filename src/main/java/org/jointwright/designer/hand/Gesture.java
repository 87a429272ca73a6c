package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pointer;

/** Something the hand does on the plan, from pressing to letting go. */
public interface Gesture {
  /** The hand presses. */
  Desk press(Desk desk, Pointer pointer);

  /** The hand moves while it presses. */
  Desk drag(Desk desk, Pointer pointer);

  /** The hand lets go. */
  Desk release(Desk desk, Pointer pointer);
}
