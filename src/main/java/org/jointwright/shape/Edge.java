package org.jointwright.shape;

/**
 * A directed piece of line: straight or a circular arc. Places along it are shares of its length
 * from 0 at the start to 1 at the end.
 */
public sealed interface Edge permits Segment, Arc {
  /** Where it starts. */
  Point start();

  /** Where it ends. */
  Point end();

  /** Its length in inches. */
  double length();

  /** The point at the share {@code t} of its length. */
  Point at(double t);

  /** The unit vector along it at the share {@code t}; for an arc the true tangent. */
  Point direction(double t);

  /** The same line run the other way. */
  Edge reversed();

  /** The part between two shares, {@code 0 <= from < to <= 1}. */
  Edge part(double from, double to);

  /** The share of the point of this edge nearest to {@code p}, in [0, 1]. */
  double nearest(Point p);

  /** The smallest box that holds it. */
  Box box();

  /** The distance from {@code p} to the nearest point of this edge, inches. */
  default double distance(Point p) {
    return at(nearest(p)).distance(p);
  }

  /** The signed angle turned from start to end in radians, 0 for a straight edge. */
  double turn();
}
