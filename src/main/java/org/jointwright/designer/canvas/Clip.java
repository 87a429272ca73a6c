package org.jointwright.designer.canvas;

import java.util.Optional;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Cuts off what lies beside a box. */
final class Clip {
  private Clip() {}

  /** The part of a segment in a box; empty where none is. By the method of Liang and Barsky. */
  static Optional<Segment> of(Segment s, Box box) {
    Point d = s.end().minus(s.start());
    double[] part = {0, 1};
    boolean isIn =
        cut(part, -d.x(), s.start().x() - box.minX())
            && cut(part, d.x(), box.maxX() - s.start().x())
            && cut(part, -d.y(), s.start().y() - box.minY())
            && cut(part, d.y(), box.maxY() - s.start().y());
    return isIn && part[0] < part[1] ? Optional.of(s.part(part[0], part[1])) : Optional.empty();
  }

  /** Narrows {@code part} by one side of the box; false where nothing is left. */
  private static boolean cut(double[] part, double away, double room) {
    if (away == 0) {
      return room >= 0;
    }
    double t = room / away;
    if (away < 0) {
      part[0] = Math.max(part[0], t);
    } else {
      part[1] = Math.min(part[1], t);
    }
    return part[0] <= part[1];
  }
}
