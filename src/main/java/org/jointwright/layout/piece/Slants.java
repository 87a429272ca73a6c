package org.jointwright.layout.piece;

import org.jointwright.practice.Corners;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Counts joints that stand a little off parallel, square or radial to the edges they serve. */
final class Slants {
  private static final double LEAST = Math.sin(Math.toRadians(1));
  private static final double MOST = Math.sin(Math.toRadians(15));
  private static final double FORCED = 0.5;
  private static final double TIGHT = Corners.TIGHT_RADIUS.value().inches();

  private Slants() {}

  static double count(Draft draft) {
    double sum = 0;
    for (Laid l : draft.lines()) {
      if (!l.locked() && l.path() instanceof Segment s) {
        sum += weight(draft.ground(), l, s);
      }
    }
    return sum;
  }

  private static double weight(Ground ground, Laid line, Segment path) {
    Point u = path.direction(0);
    double least = 1;
    boolean corner = false;
    for (Point axis : ground.axes()) {
      least = Math.min(least, off(u, axis));
    }
    for (boolean last : new boolean[] {false, true}) {
      int tag = line.tag(last);
      // Round a small circle every direction is radial: that makes no joint straight.
      if (tag < 0 && !isTight(ground.edge(tag))) {
        Edge edge = ground.edge(tag);
        double share = edge.nearest(line.end(last));
        least = Math.min(least, off(u, edge.direction(share)));
        double in = share * edge.length();
        corner |= in < 0.5 || edge.length() - in < 0.5;
      }
    }
    boolean slanted = least > LEAST && least < MOST;
    return !slanted ? 0 : corner ? FORCED : 1;
  }

  private static boolean isTight(Edge edge) {
    return edge instanceof Arc a && a.radius() < TIGHT;
  }

  /** The sine of the angle off parallel or square, whichever is less. */
  private static double off(Point u, Point v) {
    return Math.min(Math.abs(u.cross(v)), Math.abs(u.dot(v)));
  }
}
