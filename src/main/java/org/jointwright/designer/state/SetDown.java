package org.jointwright.designer.state;

import org.jointwright.designer.ready.ReadyKind;
import org.jointwright.designer.ready.ReadyShape;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.shape.Point;

/** Ready shapes in the hand: sized by typing, led by the pointer or the arrow keys, set down. */
public final class SetDown {
  private SetDown() {}

  /** A desk with a rectangle of the usual size in the hand, clear of what is drawn. */
  public static Desk begin(Desk desk) {
    Point at = Extent.of(desk).map(Drafting::beside).orElse(new Point(0, 0));
    ReadyShape shape = ReadyShape.usual(ReadyKind.RECTANGLE, desk.plan().unit().isMetric());
    return holding(
            desk.withStep(Step.OUTLINE).picking(Pick.NOTHING),
            new Hold.HeldShape(shape, Pencil.free(at)))
        .fitted();
  }

  /** The desk with another shape in the hand, where the one before stood. */
  public static Desk changed(Desk desk, ReadyShape shape) {
    return desk.hand()
        .shape()
        .map(h -> inSight(holding(desk, new Hold.HeldShape(shape, h.pencil()))))
        .orElse(desk);
  }

  /** The shape led to a pointer; corners, sides and strings draw its first corner. */
  public static Desk lead(Desk desk, Pointer pointer) {
    return desk.hand()
        .shape()
        .map(h -> holding(desk, new Hold.HeldShape(h.shape(), pencil(desk, pointer))))
        .orElse(desk);
  }

  private static Pencil pencil(Desk desk, Pointer pointer) {
    return Drafting.pencil(desk, Draft.EMPTY, pointer);
  }

  /** The shape pushed by so many inches. */
  public static Desk push(Desk desk, Point by) {
    return desk.hand()
        .shape()
        .map(
            h ->
                inSight(
                    holding(
                        desk,
                        new Hold.HeldShape(h.shape(), Pencil.free(h.pencil().at().plus(by))))))
        .orElse(desk);
  }

  /**
   * The shape set down as a slab, or the desk told why it is none.
   *
   * @param name what a new slab is called, before its number
   */
  public static Desk place(Desk desk, String name) {
    return desk.hand().shape().map(h -> Finished.shape(desk, h, name)).orElse(desk);
  }

  private static Desk holding(Desk desk, Hold.HeldShape held) {
    return desk.withHand(InHand.holding(held));
  }

  /** The paper fitted anew where a part of the shape has gone out of sight. */
  private static Desk inSight(Desk desk) {
    boolean isSeen =
        desk.hand()
            .shape()
            .flatMap(h -> h.shape().at(h.pencil().at()))
            .map(o -> o.ring().box())
            .filter(
                b ->
                    !desk.viewport().clear().holds(new Point(b.minX(), b.minY()))
                        || !desk.viewport().clear().holds(new Point(b.maxX(), b.maxY())))
            .isEmpty();
    return isSeen ? desk : desk.fitted();
  }
}
