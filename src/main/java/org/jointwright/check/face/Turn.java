package org.jointwright.check.face;

import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** The turn from one edge to the next where they meet. */
public final class Turn {
  /** From here on a turn may have the wrong sign for a hair between tangents, degrees. */
  private static final double NEARLY_BACK = 170;

  private static final double STRAIGHT_BACK = 179.99;

  private Turn() {}

  /** The signed turn between the tangents, degrees in [-180, 180], to the left positive. */
  public static double degrees(Edge in, Edge out) {
    Point u = in.direction(1);
    Point v = out.direction(0);
    double turn = Math.toDegrees(Math.atan2(u.cross(v), u.dot(v)));
    if (Math.abs(turn) <= NEARLY_BACK) {
      return turn;
    }
    boolean insideIsSharp = openingBesideTheCorner(in, out) < 180;
    if (Math.abs(turn) >= STRAIGHT_BACK) {
      return insideIsSharp ? 180 : -180;
    }
    return turn < 0 && insideIsSharp ? 180 : turn;
  }

  /** The angle on the left as seen from points a little way off the corner, degrees. */
  private static double openingBesideTheCorner(Edge in, Edge out) {
    double step = Math.min(0.25, Math.min(in.length(), out.length()) / 3);
    Point a = in.at(1 - step / in.length()).minus(out.start());
    Point b = out.at(step / out.length()).minus(out.start());
    double angle = Math.toDegrees(a.angle() - b.angle());
    return angle < 0 ? angle + 360 : angle;
  }
}
