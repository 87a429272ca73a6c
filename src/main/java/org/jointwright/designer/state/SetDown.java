package org.jointwright.designer.state;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jointwright.designer.ready.Addition;
import org.jointwright.designer.ready.ReadyKind;
import org.jointwright.designer.ready.ReadyShape;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;

/**
 * What waits in the hand, a ready shape or what is added to a slab: sized by typing, led by the
 * pointer or the arrow keys, set down.
 */
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

  /**
   * A desk with a fixed object or opening in the hand: over the middle of what is in sight, or,
   * where that is taken, over a free place of the slab.
   *
   * @param called what an object is called before its number
   */
  public static Desk adding(Desk desk, String slabId, Addition what, String called) {
    return desk.plan()
        .slab(slabId)
        .map(
            s -> {
              Point seen =
                  Pointer.stepped(desk.viewport().clear().centre(), Pointer.wholeStep(desk.plan()));
              boolean isFree =
                  s.region().contains(seen)
                      && Addition.clear(desk.plan(), s, seen)
                          > Math.hypot(what.wide(), what.deep());
              Point at = isFree ? seen : Addition.middle(desk.plan(), s);
              return holding(desk, new Hold.HeldAddition(slabId, what, at, called));
            })
        .orElse(desk);
  }

  /** What is added, otherwise. */
  public static Desk changed(Desk desk, UnaryOperator<Hold.HeldAddition> change) {
    return desk.hand().addition().map(h -> holding(desk, change.apply(h))).orElse(desk);
  }

  /**
   * What is held led to a pointer; corners, sides and strings draw the first corner of a shape,
   * whole inches the middle of what is added.
   */
  public static Desk lead(Desk desk, Pointer pointer) {
    return desk.hand()
        .waiting()
        .map(
            held ->
                switch (held) {
                  case Hold.HeldShape h -> new Hold.HeldShape(h.shape(), pencil(desk, pointer));
                  case Hold.HeldAddition h ->
                      led(
                          desk.plan(),
                          h,
                          Pointer.stepped(pointer.plan(), pointer.step(desk.plan())));
                })
        .map(h -> holding(desk, h))
        .orElse(desk);
  }

  private static Hold.HeldAddition led(Plan plan, Hold.HeldAddition held, Point at) {
    return held.led(over(plan, held, at), at);
  }

  /** Whatever slab is there; over none it stays that of the last one. */
  private static String over(Plan plan, Hold.HeldAddition held, Point at) {
    return plan.slabs().stream()
        .filter(s -> s.region().contains(at))
        .findFirst()
        .map(Slab::id)
        .orElse(held.slab());
  }

  private static Pencil pencil(Desk desk, Pointer pointer) {
    return Drafting.pencil(desk, Draft.EMPTY, pointer);
  }

  /** What is held pushed by so many inches. */
  public static Desk push(Desk desk, Point by) {
    return desk.hand()
        .waiting()
        .map(
            held ->
                switch (held) {
                  case Hold.HeldShape h ->
                      new Hold.HeldShape(h.shape(), Pencil.free(h.pencil().at().plus(by)));
                  case Hold.HeldAddition h -> {
                    Point at = h.at().plus(by);
                    yield h.at(over(desk.plan(), h, at), at);
                  }
                })
        .map(h -> inSight(holding(desk, h)))
        .orElse(desk);
  }

  /**
   * What is held set down, or the desk told why it cannot be.
   *
   * @param name what a new slab is called, before its number
   */
  public static Desk place(Desk desk, String name) {
    return desk.hand()
        .waiting()
        .map(
            held ->
                switch (held) {
                  case Hold.HeldShape h -> Finished.shape(desk, h, name);
                  case Hold.HeldAddition h -> added(desk, h);
                })
        .orElse(desk);
  }

  private static Desk added(Desk desk, Hold.HeldAddition held) {
    Optional<Slab> slab = desk.plan().slab(held.slab()).filter(s -> s.region().contains(held.at()));
    if (slab.isEmpty()) {
      return desk.told(Notice.trouble("window.notice.besideSlab", List.of()));
    }
    boolean isObject = held.what().kind().isPresent();
    String name = Addition.freeName(desk.plan(), held.called());
    Desk added = desk.edited(held.what().in(held.slab(), held.at(), name));
    if (!isObject && !Soundness.holds(added.plan(), held.slab())) {
      return desk.told(Notice.trouble("window.notice.noOpening", List.of()));
    }
    Pick pick =
        isObject
            ? new Pick.AtFixed(name)
            : new Pick.AtOpening(held.slab(), slab.get().openings().size());
    return added.letGo().picking(pick);
  }

  private static Desk holding(Desk desk, Hold.Waiting held) {
    return desk.withHand(InHand.holding(held));
  }

  /** The paper fitted anew where a part of the shape has gone out of sight. */
  private static Desk inSight(Desk desk) {
    boolean isSeen =
        desk.hand()
            .waiting()
            .flatMap(Hold.Waiting::box)
            .filter(
                b ->
                    !desk.viewport().clear().holds(new Point(b.minX(), b.minY()))
                        || !desk.viewport().clear().holds(new Point(b.maxX(), b.maxY())))
            .isEmpty();
    return isSeen ? desk : desk.fitted();
  }
}
