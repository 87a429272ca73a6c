package org.jointwright.layout.piece;

import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;

/** Tells whether a point of an arc's circle lies on the arc, its ends taken generously. */
final class ArcEnds {
  private ArcEnds() {}

  /** Adds the crossing at {@code p} when the arc reaches it. */
  static void add(List<Carrier.Crossing> found, Carrier carrier, Arc arc, Point p) {
    double share = arc.nearest(p);
    double length = arc.length();
    if (share * length < Carrier.END) {
      share = 0;
    } else if ((1 - share) * length < Carrier.END) {
      share = 1;
    }
    Point on = arc.at(share);
    if (on.distance(p) <= 2 * Carrier.END) {
      found.add(new Carrier.Crossing(carrier.place(on), share));
    }
  }
}
