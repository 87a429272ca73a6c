package org.jointwright.layout.piece;

import org.jointwright.practice.Corners;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Weighs joints that stand off parallel, square or radial to the edges they serve: one for each
 * that is 1 to 15 degrees off (S10), less for those that are less in the way of the eye. On a slab
 * with square corners any other direction is odd, however steep: common practice, no source.
 */
final class Slants {
  /** What is less off is square: the whole-inch marks of two sides seldom agree better. */
  private static final double LEAST = Math.sin(Math.toRadians(0.15));

  private static final double LITTLE = Math.sin(Math.toRadians(1));
  private static final double MOST = Math.sin(Math.toRadians(15));

  /** A joint off by less than a degree is ugly, but hardly seen. */
  private static final double FAINT = 0.25;

  private static final double FORCED = 0.5;

  /**
   * A finisher pays 12 ft or a tee and a little for a square joint where all corners are square.
   */
  private static final double ON_SQUARE = 2;

  /** With fewer feet of joint than this a finisher pays less for a square one. */
  private static final double WHOLE = 60;

  /** Off by less than a degree where nothing asks for it. */
  private static final double FAINT_ON_SQUARE = 0.5;

  /** From corner to corner of a square is no slant: the sine of twice 42 degrees. */
  private static final double DIAGONAL = Math.sin(Math.toRadians(84));

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

  /**
   * The weights of a draft's joints.
   *
   * @param feet the length of its joints
   */
  static double count(Draft draft, double feet) {
    double sum = 0;
    int splayed = 0;
    int square = 0;
    boolean squareSlab = isSquare(draft.ground());
    for (Laid l : draft.lines()) {
      if (!l.locked() && l.path() instanceof Segment s) {
        double weight = weight(draft.ground(), l, s, squareSlab);
        sum += weight;
        if (leavesOpening(draft.ground(), l)) {
          splayed += weight == ON_SQUARE ? 1 : 0;
          square += weight == 0 ? 1 : 0;
        }
      }
    }
    // Splayed alike from all corners of an opening, joints look meant.
    double odd = square == 0 ? sum - splayed * ON_SQUARE : sum;
    double share = squareSlab ? Math.min(1, feet / WHOLE) : 1;
    return odd * share * (draft.ground().axes().size() == 1 ? 1 : ON_SLANTED);
  }

  /** Whether a joint starts at a corner of an opening or of a box-out. */
  private static boolean leavesOpening(Ground ground, Laid line) {
    for (boolean last : new boolean[] {false, true}) {
      int tag = line.tag(last);
      if (tag < 0 && !ground.isOutline(tag) && isAtCorner(ground.edge(tag), line.end(last))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAtCorner(Edge edge, Point p) {
    return edge.start().distance(p) < 0.5 || edge.end().distance(p) < 0.5;
  }

  private static double weight(Ground ground, Laid line, Segment path, boolean squareSlab) {
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
        corner |= isAtCorner(edge, line.end(last));
      }
    }
    if (least <= LEAST || isBetween(ground, u)) {
      return 0;
    }
    if (!round && squareSlab) {
      boolean meant = corner && Math.abs(2 * least * Math.sqrt(1 - least * least)) > DIAGONAL;
      return meant ? 0 : least <= LITTLE ? FAINT_ON_SQUARE : ON_SQUARE;
    }
    double odd = round || ground.axes().size() == 1 ? 0 : ODD;
    double weight = least <= LITTLE ? FAINT : least < MOST ? 1 : odd;
    return corner ? FORCED * weight : weight;
  }

  /** Whether all edges that give a direction run along one pair of axes, and none is a bow. */
  private static boolean isSquare(Ground ground) {
    if (ground.axes().size() > 1) {
      return false;
    }
    for (Loop loop : ground.loops()) {
      for (Edge e : loop.edges()) {
        boolean bow = e instanceof Arc && !isTight(e);
        boolean aside = e.length() > LONG && off(e.direction(0), ground.axes().getFirst()) > NEARLY;
        if (bow || (e instanceof Segment && aside)) {
          return false;
        }
      }
    }
    return true;
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
