package org.jointwright.layout.piece;

import org.jointwright.plan.JointKind;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * A cut that was made: one joint.
 *
 * @param move what was asked
 * @param path where it runs, end to end, towards the carrier's growing places
 * @param startTag what it starts on
 * @param endTag what it ends on
 * @param kind contraction for what the engine lays
 * @param locked whether the user holds it, so that it is not the engine's to move
 * @param follows whether it was made with a line before it: the second arm of a bent cut, or a
 *     mirror image
 */
public record Laid(
    Move move,
    Edge path,
    int startTag,
    int endTag,
    JointKind kind,
    boolean locked,
    boolean follows) {
  /** One of its ends. */
  public Point end(boolean last) {
    return last ? path.end() : path.start();
  }

  /** What one of its ends stands on. */
  public int tag(boolean last) {
    return last ? endTag : startTag;
  }

  /** The unit direction in which it would go on beyond one of its ends. */
  public Point onward(boolean last) {
    return last ? path.direction(1) : path.direction(0).times(-1);
  }

  /** The same line as one that was made with another. */
  Laid following() {
    return new Laid(move, path, startTag, endTag, kind, locked, /* follows= */ true);
  }
}
