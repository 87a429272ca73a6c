package org.jointwright.designer.hand;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.Things;

/** Which gesture a press of the hand begins. */
public final class Gestures {
  private Gestures() {}

  /**
   * The gesture that begins at {@code pointer}.
   *
   * @param name what a new slab is called, before its number
   */
  public static Gesture begin(Desk desk, Pointer pointer, String name) {
    return begin(desk, pointer, name, false);
  }

  /**
   * The same, for a hand that may add to what is picked.
   *
   * @param adds whether what lies there is picked too, or no longer
   */
  public static Gesture begin(Desk desk, Pointer pointer, String name, boolean adds) {
    if (desk.hand().waiting().isPresent()) {
      return new PlaceShape(name);
    }
    if (desk.picked() instanceof Pick.Scaling) {
      return new ScalePhoto();
    }
    if (desk.picked() instanceof Pick.AtPhoto && isOnPhoto(desk, pointer)) {
      return new MovePhoto(pointer);
    }
    if (desk.draft().isPresent() || isBlank(desk)) {
      return new DrawEdge(name);
    }
    Pick pick = UnderPointer.of(desk, pointer.plan());
    boolean isOutline = desk.sight().step() == Step.OUTLINE;
    if (adds && isOutline) {
      return Things.of(pick).isEmpty()
          ? new PickArea(pointer, desk.picked())
          : new PickUp(Things.toggled(desk.picked(), pick));
    }
    if (desk.picked() instanceof Pick.Several s
        && s.things().containsAll(Things.of(pick))
        && !Things.of(pick).isEmpty()) {
      return new MoveThings(s, s.things(), pointer);
    }
    return switch (pick) {
      case Pick.AtCorner c -> MoveCorner.of(desk, c.corner(), pointer);
      case Pick.AtJoint j -> MoveJoint.of(desk, j, pointer);
      case Pick.AtFixed f -> MoveFixed.of(desk, f.id(), pointer);
      case Pick.Nothing n -> isOutline ? new PickArea(pointer, n) : new PickUp(n);
      case Pick.WholeSlab s -> isOutline ? new MoveThings(s, Things.of(s), pointer) : new PickUp(s);
      case Pick.AtEdge e ->
          BendSide.isAt(desk, e.edge(), pointer)
              ? new BendSide(e.edge(), pointer)
              : PushSide.of(desk, e.edge(), pointer);
      case Pick.AtOpening o -> new MoveThings(o, Things.of(o), pointer);
      case Pick.Several s -> new PickUp(s);
      case Pick.AtFeature f -> MoveFeature.of(desk, f, pointer);
      case Pick.AtZone z -> MoveGround.zone(z, pointer);
      case Pick.AtGiven g -> MoveGround.given(desk, g, pointer);
      case Pick.AtPhoto p -> new PickUp(p);
      case Pick.Scaling s -> new PickUp(s);
    };
  }

  /** The gesture that pushes the paper about. */
  public static Gesture movePaper(Desk desk, Pointer pointer) {
    return MovePaper.at(desk, pointer);
  }

  private static boolean isOnPhoto(Desk desk, Pointer pointer) {
    return desk.plan().photo().filter(p -> p.ring().contains(pointer.plan())).isPresent();
  }

  /** On blank paper the first click is the first corner. */
  private static boolean isBlank(Desk desk) {
    return desk.plan().slabs().isEmpty() && desk.sight().step() == Step.OUTLINE;
  }
}
