package org.jointwright.check.face;

import org.jointwright.joint.Source;
import org.jointwright.shape.Edge;

/**
 * A side of a panel as the rules see it, the panel on its left.
 *
 * @param edge where it runs
 * @param source what it runs along
 * @param hard whether it is an edge of the concrete (outline, opening, box-out) and no joint
 * @param soft whether it is a side of a box-out that is round though it is made of straight pieces
 */
public record Step(Edge edge, Source source, boolean hard, boolean soft) {
  /** How far it turns from start to end, degrees, to the left positive. */
  public double bend() {
    return Math.toDegrees(edge.turn());
  }

  /** Its length, inches. */
  public double length() {
    return edge.length();
  }
}
