package org.jointwright.layout.piece;

import org.jointwright.practice.Corners;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Weighs joints that stand off parallel, square or radial to the edges they serve: one for each
 * that is 1 to 15 degrees off (S10), less for those that are less in the way of the eye.
 */
final class Slants {
  /** What is less off is square: the whole-inch marks of two sides seldom agree better. */
  private static final double LEAST = Math.sin(Math.toRadians(0.15));

  private static final double LITTLE = Math.sin(Math.toRadians(1));
  private static final double MOST = Math.sin(Math.toRadians(15));

  /** A joint off by less than a degree is ugly, but hardly seen. */
  private static final double FAINT = 0.25;

  private static final double FORCED = 0.5;

  /** The same from a square corner, where it may run along either side. */
  private static final double FROM_SQUARE = 0.65;

  /** On a slab with slanted sides a slant shows less. */
  private static final double ON_SLANTED = 0.75;

  /** On a slab with slanted sides a joint at an angle all its own looks meant. */
  private static final double ODD = 0.1;

  private static final double NEARLY = Math.sin(Math.toRadians(3));

  private static final double HAIR = 1e-6;

  /** Shorter edges give no direction, inches. */
  private static final double LONG = 36;

  private static final double TIGHT = Corners.TIGHT_RADIUS.value().inches();

  private Slants() {}

  static double count(Draft draft) {
    double sum = 0;
    for (Laid l : draft.lines()) {
      if (!l.locked() && l.path() instanceof Segment s) {
        sum += weight(draft.ground(), l, s);
      }
    }
    return sum * (draft.ground().axes().size() == 1 ? 1 : ON_SLANTED);
  }

  private static double weight(Ground ground, Laid line, Segment path) {
    Point u = path.direction(0);
    double least = 1;
    boolean corner = false;
    boolean round = false;
    for (Point axis : ground.axes()) {
      least = Math.min(least, off(u, axis));
    }
    for (boolean last : new boolean[] {false, true}) {
      int tag = line.tag(last);
      round |= tag < 0 && isTight(ground.edge(tag));
      // Round a small circle every direction is radial: that makes no joint straight.
      if (tag < 0 && !isTight(ground.edge(tag))) {
        Edge edge = ground.edge(tag);
        double share = edge.nearest(line.end(last));
        least = Math.min(least, off(u, edge.direction(share)));
        double in = share * edge.length();
        corner |= in < 0.5 || edge.length() - in < 0.5;
      }
    }
    if (least <= LEAST || isBetween(ground, u)) {
      return 0;
    }
    double odd = round || ground.axes().size() == 1 ? 0 : ODD;
    double weight = least <= LITTLE ? FAINT : least < MOST ? 1 : odd;
    double forced = ground.axes().size() > 1 ? FORCED : FROM_SQUARE;
    return corner ? forced * weight : weight;
  }

  /** Whether a direction lies between those of two sides that are not quite parallel. */
  private static boolean isBetween(Ground ground, Point u) {
    double most = 0;
    double least = 0;
    for (Loop loop : ground.loops()) {
      for (Edge e : loop.edges()) {
        if (e instanceof Segment s && s.length() > LONG) {
          Point d = s.direction(0);
          Point along = Math.abs(u.dot(d)) > Math.abs(u.cross(d)) ? d : d.left();
          double off = u.cross(along) * Math.signum(u.dot(along));
          if (Math.abs(off) < NEARLY) {
            most = Math.max(most, off);
            least = Math.min(least, off);
          }
        }
      }
    }
    return most > HAIR && least < -HAIR;
  }

  private static boolean isTight(Edge edge) {
    return edge instanceof Arc a && a.radius() < TIGHT;
  }

  /** The sine of the angle off parallel or square, whichever is less. */
  private static double off(Point u, Point v) {
    return Math.min(Math.abs(u.cross(v)), Math.abs(u.dot(v)));
  }
}
