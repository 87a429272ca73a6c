package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Step;

/** Which gesture a press of the hand begins. */
public final class Gestures {
  private Gestures() {}

  /**
   * The gesture that begins at {@code pointer}.
   *
   * @param name what a new slab is called, before its number
   */
  public static Gesture begin(Desk desk, Pointer pointer, String name) {
    if (desk.draft().isPresent() || isBlank(desk)) {
      return new DrawEdge(name);
    }
    Pick pick = UnderPointer.of(desk, pointer.plan());
    return switch (pick) {
      case Pick.AtCorner c -> MoveCorner.of(desk, c.corner(), pointer);
      case Pick.AtJoint j -> new MoveJoint(j, pointer);
      case Pick.AtFixed f -> MoveFixed.of(desk, f.id(), pointer);
      case Pick.Nothing n -> new PickUp(n);
      case Pick.WholeSlab s -> new PickUp(s);
      case Pick.AtEdge e -> new PickUp(e);
      case Pick.AtOpening o -> new PickUp(o);
      case Pick.AtFeature f -> MoveFeature.of(desk, f, pointer);
      case Pick.AtZone z -> MoveGround.zone(z, pointer);
      case Pick.AtGiven g -> MoveGround.given(desk, g, pointer);
    };
  }

  /** The gesture that pushes the paper about. */
  public static Gesture movePaper(Desk desk, Pointer pointer) {
    return MovePaper.at(desk, pointer);
  }

  /** On blank paper the first click is the first corner. */
  private static boolean isBlank(Desk desk) {
    return desk.plan().slabs().isEmpty() && desk.sight().step() == Step.OUTLINE;
  }
}
