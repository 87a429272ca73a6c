package org.jointwright.layout.search;

import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;

/** What the user would rather have than the fewest feet to cut. */
public sealed interface Taste {
  /** The fewest feet to cut, by the rules' cost. */
  record Shortest() implements Taste {}

  /**
   * Panels as square as they come.
   *
   * @param most what the layout may cost, ft
   */
  record Squarest(double most) implements Taste {
    /** How much a mean aspect of one more weighs, in lengths of all joints. */
    private static final double WEIGHT = 6;

    /** How much unevenness of one weighs, in lengths of all joints: a grid stays even. */
    private static final double UNEVEN = 4;

    /** What a joint a few degrees off weighs besides, ft: no line is bent for pennies of it. */
    private static final double SLANT = 60;
  }

  /**
   * Straight joints along a direction or square to it.
   *
   * @param along a unit vector on the bench
   * @param most what the layout may cost, ft
   */
  record LinedUp(Point along, double most) implements Taste {
    /** What a joint that runs another way weighs, ft, and its length besides. */
    private static final double ASTRAY = 8;
  }

  /** Mean aspects nearer than this are the same. */
  double SAME_ASPECT = 0.05;

  /** A joint off by less runs along it: the sine of two degrees. */
  double ALONG = 0.035;

  /** How much dearer than the shortest a layout of another taste may be. */
  double WORTH = 1.5;

  /** What each foot over that weighs, ft: more than any gain. */
  double OVER = 50;

  /** What this taste adds to the value of a draft, ft. */
  default double extra(Draft draft) {
    return switch (this) {
      case Shortest s -> 0;
      case Squarest s ->
          draft.tally().length()
                  * (Squarest.WEIGHT * (aspect(draft) - 1) + Squarest.UNEVEN * draft.tally().cv())
              + Squarest.SLANT * draft.tally().slants()
              + OVER * Math.max(0, draft.tally().cost() - s.most());
      case LinedUp u ->
          astray(draft, u.along()) + OVER * Math.max(0, draft.tally().cost() - u.most());
    };
  }

  /** Where a pattern leaves nothing broken, how much longer ones are still tried. */
  default double ample() {
    return this instanceof Squarest ? WORTH + 0.1 : 1.35;
  }

  /** Whether a draft is what this taste wants rather than the shortest, and not too dear for it. */
  default boolean prefers(Draft draft, Draft shortest) {
    boolean asWhole =
        draft.tally().broken() <= shortest.tally().broken()
            && draft.tally().excess() <= shortest.tally().excess() + 1e-9;
    if (!asWhole || draft.tally().cost() > WORTH * shortest.tally().cost()) {
      return false;
    }
    return switch (this) {
      case Shortest s -> false;
      case Squarest s -> aspect(draft) < aspect(shortest) - SAME_ASPECT;
      case LinedUp u -> astray(draft, u.along()) < astray(shortest, u.along()) - 1;
    };
  }

  private static double aspect(Draft draft) {
    return draft.pieces().stream().mapToDouble(Taste::aspect).average().orElse(1);
  }

  private static double aspect(Piece piece) {
    return piece.measures().aspect();
  }

  private static double astray(Draft draft, Point along) {
    double feet = 0;
    for (Laid l : draft.lines()) {
      Point u = l.path().direction(0.5);
      double off = Math.min(Math.abs(u.cross(along)), Math.abs(u.dot(along)));
      if (Score.isFree(l) && !(l.path() instanceof Arc) && off > ALONG) {
        feet += LinedUp.ASTRAY + l.path().length() / 12;
      }
    }
    return feet;
  }
}
