package org.jointwright.plan;

import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * One pull of the tape: a side of a slab or of an opening, from the corner where the tape hooks to
 * the corner where the side ends. An arc is taped along the form. Straight sides that lie opposite
 * each other run the same way, so that a joint square across has one figure at both ends.
 *
 * @param slab the slab whose side it is, the first one where slabs share it
 * @param from where the tape hooks
 * @param to where the side ends
 * @param path the side, from the one corner to the other
 * @param along whether the slab (for an opening, the concrete round it) lies on the left of it
 */
public record Tape(String slab, LetteredCorner from, LetteredCorner to, Path path, boolean along) {
  /** Its name by its corners, {@code "A–B"}. */
  public String name() {
    return from.letter() + "–" + to.letter();
  }

  /** The length of the side in inches, along the form. */
  public double length() {
    return path.length();
  }

  /** Whether it runs straight; bends too slight for a corner count as straight. */
  public boolean isStraight() {
    return path.edges().stream().allMatch(Segment.class::isInstance);
  }

  /** The running distance from the first corner to the point of the side nearest {@code p}. */
  public double distanceTo(Point p) {
    return path.along(p);
  }

  /** Whether {@code p} stands on the side, within {@code tolerance} inches. */
  public boolean carries(Point p, double tolerance) {
    return path.isNear(p, tolerance);
  }
}
