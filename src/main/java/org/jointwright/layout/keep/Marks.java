package org.jointwright.layout.keep;

import org.jointwright.shape.Point;

/** Brings ends that stood at whole inches to whole inches again, the way that moves them least. */
final class Marks {
  /** What is no farther from a whole inch stands at it: 1/16 in, the rules' S6. */
  private static final double AT_MARK = 1.0 / 16;

  /** How far from where it should stand an end may be brought, in steps. */
  private static final double FAR = 0.7;

  private static final double TIE = 1e-6;

  private final double step;
  private final boolean bring;

  /**
   * Marks for inches, or for whole 10 mm.
   *
   * @param bring whether ends are brought to them
   */
  Marks(boolean metric, boolean bring) {
    step = metric ? 10 / 25.4 : 1;
    this.bring = bring;
  }

  double step() {
    return step;
  }

  /** Whether an end stood on a straight edge at a whole inch from one of its corners. */
  boolean wasMarked(Node node, Stretch stretch) {
    return stretch.isStraight()
        && (isWhole(node.along()) || isWhole(stretch.lengthBefore() - node.along()));
  }

  private boolean isWhole(double inches) {
    return Math.abs(inches - Math.rint(inches / step) * step) <= AT_MARK;
  }

  /** The mark near a place along a stretch: of those near enough the one that moves least. */
  double mark(Node node, Stretch stretch, double ideal) {
    double length = stretch.length();
    if (Math.abs(length - stretch.lengthBefore()) < TIE && Math.abs(ideal - node.along()) < TIE) {
      return node.along();
    }
    double best = ideal;
    if (!bring) {
      return best;
    }
    double least = Double.POSITIVE_INFINITY;
    double nearest = Double.POSITIVE_INFINITY;
    for (boolean fromEnd : new boolean[] {false, true}) {
      double from = fromEnd ? length - ideal : ideal;
      for (int k = -1; k <= 1; k++) {
        double whole = (Math.rint(from / step) + k) * step;
        double along = fromEnd ? length - whole : whole;
        double off = Math.abs(along - ideal);
        if (off <= FAR * step && along > 0 && along < length) {
          Point p = stretch.at(along);
          double moved = p.distance(node.before());
          if (moved < least - TIE || (moved < least + TIE && off < nearest)) {
            best = along;
            least = moved;
            nearest = off;
          }
        }
      }
    }
    return best;
  }
}
