package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.SetDown;
import org.jointwright.shape.Point;

/** What an arrow key moves: what is in the hand, what is picked, or else what is pointed at. */
public final class Arrows {
  private Arrows() {}

  /**
   * An arrow key pressed.
   *
   * @param way where to, up the paper positive
   * @param steps how many inches, or centimetres in a metric plan
   */
  public static Desk pressed(Desk desk, Point way, double steps) {
    Point by = way.times(Pointer.wholeStep(desk.plan()) * steps);
    if (desk.draft().isPresent()) {
      return Drafting.push(desk, by);
    }
    if (desk.hand().waiting().isPresent()) {
      return SetDown.push(desk, by);
    }
    return desk.picked().equals(Pick.NOTHING)
        ? Walk.towards(desk, way)
        : Nudge.by(desk, way, steps);
  }
}
