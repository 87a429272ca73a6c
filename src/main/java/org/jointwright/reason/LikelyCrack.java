package org.jointwright.reason;

import org.jointwright.joint.Source;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Cited;
import org.jointwright.shape.Point;

/**
 * Where it would likely crack from an inside corner that no joint leaves from. Likely, not
 * computed: it is the line that halves the corner, 135 degrees from both sides of a square one.
 *
 * @param from the corner
 * @param to where the line meets an edge or a joint that is left
 * @param meets what it meets there
 * @param degrees the angle to either side of the corner
 */
public record LikelyCrack(Point from, Point to, Source meets, double degrees) {
  /** The page that says which way such a crack runs. */
  public Cited source() {
    return Angles.CRACK.source();
  }
}
