package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Weighs joints that stand off parallel, square or radial to the edges they serve: one for each
 * that is 1 to 15 degrees off (S10), less for those that are less in the way of the eye. Among
 * sides that are square to each other any other direction is odd, however steep, and whatever the
 * slab does elsewhere: common practice, no source.
 */
final class Slants {
  /** What is less off is square: the whole-inch marks of two sides seldom agree better. */
  private static final double LEAST = Math.sin(Math.toRadians(0.15));

  private static final double LITTLE = Math.sin(Math.toRadians(1));
  private static final double MOST = Math.sin(Math.toRadians(15));

  /** A joint off by less than a degree is ugly, but hardly seen. */
  private static final double FAINT = 0.25;

  private static final double FORCED = 0.5;

  /** A finisher pays a tee and a panel more, some 20 ft, for a square joint among square sides. */
  private static final double ON_SQUARE = 3.5;

  /** From a post a joint may have to leave aslant to keep off the corners and the lines near by. */
  private static final double ON_ROUND = 1.5;

  /** With fewer feet of joint than this a finisher pays less for a square one. */
  private static final double WHOLE = 100;

  /** Off by less than a degree where nothing asks for it. */
  private static final double FAINT_ON_SQUARE = 0.5;

  /** From corner to corner of a square is no slant: the sine of twice 42 degrees. */
  private static final double DIAGONAL = Math.sin(Math.toRadians(84));

  /** On a slab with slanted sides a slant shows less. */
  private static final double ON_SLANTED = 0.75;

  /** On a slab with slanted sides a joint at an angle all its own looks meant. */
  private static final double ODD = 0.1;

  private final Draft draft;
  private final Ground ground;
  private final Sides sides;
  private final double share;

  private Slants(Draft draft, double share) {
    this.draft = draft;
    this.ground = draft.ground();
    this.sides = ground.memo().sides(ground);
    this.share = share;
  }

  /**
   * The weights of a draft's joints.
   *
   * @param feet the length of its joints
   */
  static double count(Draft draft, double feet) {
    return new Slants(draft, Math.min(1, feet / WHOLE)).sum();
  }

  /** The joints of a draft that slant where all beside them is square, by their numbers. */
  static List<Integer> of(Draft draft) {
    Slants slants = new Slants(draft, 1);
    List<Integer> found = new ArrayList<>();
    List<Laid> lines = draft.lines();
    for (int i = 0; i < lines.size(); i++) {
      Laid l = lines.get(i);
      boolean odd = !l.locked() && l.path() instanceof Segment s && slants.weight(i, l, s) > 0;
      if (odd && (slants.sides.areSquare() || Company.isSquare(draft, i))) {
        found.add(i);
      }
    }
    return found;
  }

  private double sum() {
    double sum = 0;
    double splayed = 0;
    double least = 1;
    double most = 0;
    List<Laid> lines = draft.lines();
    for (int i = 0; i < lines.size(); i++) {
      Laid l = lines.get(i);
      if (!l.locked() && l.path() instanceof Segment s) {
        double weight = weight(i, l, s);
        sum += weight;
        if (leavesOpening(ground, l)) {
          splayed += weight == share * ON_SQUARE ? weight : 0;
          double off = Company.off(s.direction(0), ground.axes().getFirst());
          least = Math.min(least, off);
          most = Math.max(most, off);
        }
      }
    }
    // Splayed alike from all corners of an opening, joints look meant.
    double odd = most - least < LITTLE ? sum - splayed : sum;
    return odd * (ground.axes().size() == 1 ? 1 : ON_SLANTED);
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

  private double weight(int number, Laid line, Segment path) {
    Point u = path.direction(0);
    double least = 1;
    boolean corner = false;
    boolean round = false;
    for (Point axis : ground.axes()) {
      least = Math.min(least, Company.off(u, axis));
    }
    for (boolean last : new boolean[] {false, true}) {
      int tag = line.tag(last);
      round |= tag < 0 && Company.isTight(ground.edge(tag));
      // Round a small circle every direction is radial: that makes no joint straight.
      if (tag < 0 && !Company.isTight(ground.edge(tag))) {
        Edge edge = ground.edge(tag);
        double share = edge.nearest(line.end(last));
        least = Math.min(least, Company.off(u, edge.direction(share)));
        corner |= isAtCorner(edge, line.end(last));
      }
    }
    if (least <= LEAST || sides.holdBetween(u)) {
      return 0;
    }
    if (sides.areSquare() || Company.isSquare(draft, number)) {
      boolean meant = corner && Math.abs(2 * least * Math.sqrt(1 - least * least)) > DIAGONAL;
      double whole = round ? ON_ROUND : ON_SQUARE;
      return meant ? 0 : share * (least <= LITTLE ? FAINT_ON_SQUARE : whole);
    }
    double odd = ground.axes().size() == 1 ? 0 : ODD;
    double weight = least <= LITTLE ? FAINT : least < MOST ? 1 : odd;
    return corner ? FORCED * weight : weight;
  }
}
