package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/** Places on the side of a strand that is laid already. */
final class OnStrand {
  private OnStrand() {}

  /** Where a place on it should stand: it divides what lies between known places as before. */
  static @Nullable Point place(Strand strand, Node node) {
    Point on = onLine(strand, node);
    Carrier before = strand.before();
    Point off = node.before().minus(before.at(before.place(node.before())));
    // As far beside the line as it was, which is a hair: what is still stays still.
    return on == null ? null : on.plus(off);
  }

  private static @Nullable Point onLine(Strand strand, Node node) {
    Carrier now = strand.now();
    if (now == null) {
      return null;
    }
    double x = along(strand.before(), strand.start().before(), node.before());
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    Point under = null;
    Point over = null;
    List<Node> all = new ArrayList<>(strand.nodes());
    all.addAll(strand.tees());
    for (Node n : all) {
      Point p = n.now();
      if (p != null) {
        double y = along(strand.before(), strand.start().before(), n.before());
        if (y <= x && y > low) {
          low = y;
          under = p;
        } else if (y > x && y < high) {
          high = y;
          over = p;
        }
      }
    }
    if (under == null && over == null) {
      return now.at(now.place(node.before()));
    }
    if (under == null || over == null) {
      Point from = under == null ? over : under;
      double rest = x - (under == null ? high : low);
      return from == null ? null : now.at(turned(now, now.place(from) + rest * now.perInch()));
    }
    double span = along(now, under, over);
    double share = (x - low) / (high - low);
    return now.at(turned(now, now.place(under) + span * share * now.perInch()));
  }

  /** The way from one place to another along a carrier, inches; round it counter-clockwise. */
  static double along(Carrier carrier, Point from, Point to) {
    double way = carrier.place(to) - carrier.place(from);
    if (carrier instanceof Carrier.Circle && way < 0) {
      way += 2 * Math.PI;
    }
    return way / carrier.perInch();
  }

  private static double turned(Carrier carrier, double place) {
    return carrier instanceof Carrier.Circle ? Math.IEEEremainder(place, 2 * Math.PI) : place;
  }
}
