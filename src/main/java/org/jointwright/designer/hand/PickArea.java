package org.jointwright.designer.hand;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Things;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/**
 * Picks all that lies whole in the area that the hand draws open. A slab that is picked stands for
 * what is in it.
 *
 * @param grip where the hand pressed
 * @param before what was picked then, and stays so
 */
record PickArea(Pointer grip, Pick before) implements Gesture {
  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(before);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    if (desk.hand().hold().isEmpty() && pointer.isClickAt(grip)) {
      return desk;
    }
    Desk marked = desk.picking(Things.pick(within(desk, pointer.plan())));
    return marked.withHand(InHand.holding(new Hold.HeldArea(grip.plan(), pointer.plan())));
  }

  private List<Thing> within(Desk desk, Point to) {
    Box area = Box.of(grip.plan(), to);
    List<Thing> things = new ArrayList<>(Things.of(before));
    // Undoing while the hand is down may take some away.
    things.removeIf(t -> !t.isIn(desk.plan()));
    for (Thing t : Things.all(desk.plan())) {
      boolean isIn =
          Things.box(desk.plan(), List.of(t))
              .filter(
                  b ->
                      area.holds(new Point(b.minX(), b.minY()))
                          && area.holds(new Point(b.maxX(), b.maxY())))
              .isPresent();
      boolean isCovered =
          t.within(desk.plan()).filter(s -> things.contains(new Thing.WholeSlab(s))).isPresent();
      if (isIn && !isCovered && !things.contains(t)) {
        things.add(t);
      }
    }
    return things;
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return desk.letGo();
  }
}
