package org.jointwright.designer.shaping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.plan.edit.History;
import org.jointwright.plan.edit.Named;
import org.jointwright.shape.Point;

/**
 * A fixed object from which a side went away, or to which it came, when a length was typed: the
 * tape says another figure there now, though nobody touched the object.
 *
 * @param object the object
 * @param was how far it stood from the side
 * @param now how far it stands
 */
public record Shifted(FixedObject object, SideOff was, SideOff now) {
  /** What shifts it less is no other figure, inches. */
  private static final double SAME = 0.05;

  /** What the last length shifted in a slab, by the two sides nearest each object. */
  public static List<Shifted> last(Desk desk, String slab) {
    List<History.Step> past = desk.history().past();
    boolean isLength =
        !past.isEmpty() && past.getLast().edit() instanceof Named n && SideLength.isLength(n.key());
    if (!isLength) {
      return List.of();
    }
    Plan before = past.getLast().before();
    Optional<Slab> old = before.slab(slab);
    Optional<Slab> now = desk.plan().slab(slab);
    List<Shifted> all = new ArrayList<>();
    if (old.isPresent() && now.isPresent()) {
      for (FixedObject object : desk.plan().fixedIn(slab)) {
        List<Point> at = List.of(object.shape().ring().box().centre());
        for (SideOff was : SideOff.two(old.get(), SideOff.eachWay(old.get(), at), List.of())) {
          SideOff.from(now.get(), at, was.number(old.get()))
              .filter(o -> Math.abs(o.away() - was.away()) > SAME)
              .ifPresent(o -> all.add(new Shifted(object, was, o)));
        }
      }
    }
    return all;
  }

  /** The desk with the object as far from the side as it was, and no nearer the one across. */
  public Desk back(Desk desk) {
    Slab slab = desk.plan().slab(object.slab()).orElseThrow();
    List<Point> at = List.of(object.shape().ring().box().centre());
    Point by =
        SideOff.two(slab, SideOff.eachWay(slab, at), List.of(now.number(slab))).stream()
            .filter(now::isAcross)
            .findFirst()
            .map(o -> now.to(was.away(), o))
            .orElseGet(() -> now.to(was.away()));
    return desk.edited(new FixedEdit.Move(object.id(), by)).picking(desk.picked());
  }
}
