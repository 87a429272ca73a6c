package org.jointwright.designer.sketch;

import java.util.Optional;
import org.jointwright.shape.Point;

/**
 * What draws the pencil, shown as a string line.
 *
 * @param kind why it is drawn there
 * @param from where the string is tied
 * @param to where the pencil stands
 * @param beyond where what it is tied to goes on to, such as the other end of a side
 */
public record Guide(Kind kind, Point from, Point to, Optional<Point> beyond) {
  /** A string that ends at the pencil. */
  public Guide(Kind kind, Point from, Point to) {
    this(kind, from, to, Optional.empty());
  }

  /** A string along a stretch that goes on beyond the pencil. */
  public static Guide within(Kind kind, Point from, Point to, Point beyond) {
    return new Guide(kind, from, to, Optional.of(beyond));
  }

  /** Why the pencil is drawn to a place. */
  public enum Kind {
    /** Square to the side before, or to a side nearby. */
    SQUARE,
    /** The way a side nearby runs. */
    PARALLEL,
    /** Straight on from the side before. */
    STRAIGHT_ON,
    /** Level on the paper, or plumb: the first side has nothing else to be square to. */
    LEVEL,
    /** In line with a corner. */
    IN_LINE,
    /** Half way along a side. */
    HALF_WAY,
    /** At an even share of the way between two joints, or a joint and a corner. */
    EVEN,
    /** At the end of a joint, or on it. */
    AT_JOINT,
    /** At a corner. */
    CORNER,
    /** On a side. */
    ON_SIDE,
    /** Back at the first corner. */
    FIRST_CORNER
  }

  /** The length of the string in inches. */
  public double length() {
    return from.distance(to);
  }
}
