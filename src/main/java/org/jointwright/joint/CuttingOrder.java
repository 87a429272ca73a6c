package org.jointwright.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/**
 * The order in which a slab's joints are cut, and that in which its pours end: those across its
 * long way first, from one end to the other, since the long strip cracks first; then those along
 * it. Common practice, no source.
 */
final class CuttingOrder {
  private CuttingOrder() {}

  static List<Straights.Run> of(Slab slab, List<Straights.Run> joints) {
    Box box = slab.outline().ring().box();
    boolean wide = box.width() >= box.height();
    Comparator<Straights.Run> fromLeft =
        Comparator.<Straights.Run>comparingLong(j -> Math.round(middle(j).x()))
            .thenComparingLong(j -> Math.round(middle(j).y()));
    Comparator<Straights.Run> fromBelow =
        Comparator.<Straights.Run>comparingLong(j -> Math.round(middle(j).y()))
            .thenComparingLong(j -> Math.round(middle(j).x()));
    List<Straights.Run> across =
        new ArrayList<>(joints.stream().filter(j -> upright(j) == wide).toList());
    List<Straights.Run> lengthwise =
        new ArrayList<>(joints.stream().filter(j -> upright(j) != wide).toList());
    across.sort(wide ? fromLeft : fromBelow);
    lengthwise.sort(wide ? fromBelow : fromLeft);
    across.addAll(lengthwise);
    return across;
  }

  private static boolean upright(Straights.Run j) {
    Point d = j.path().end().minus(j.path().start());
    return Math.abs(d.y()) > Math.abs(d.x());
  }

  private static Point middle(Straights.Run j) {
    return j.path().start().towards(j.path().end(), 0.5);
  }
}
