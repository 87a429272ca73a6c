package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;

/** Sets down one of the two places by which the photo beneath is scaled, where the hand lets go. */
record ScalePhoto() implements Gesture {
  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk;
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    return desk;
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    boolean isOnPhoto =
        desk.plan().photo().filter(p -> p.ring().contains(pointer.plan())).isPresent();
    return isOnPhoto && desk.picked() instanceof Pick.Scaling s
        ? desk.picking(s.at(pointer.plan()))
        : desk;
  }
}
