package org.jointwright.designer.state;

import org.jointwright.shape.Point;

/**
 * Where the pointer is.
 *
 * @param paper pixels on the paper
 * @param plan the point of the plan there
 * @param isFree whether the hand wants no help from marks: Alt is held
 */
public record Pointer(Point paper, Point plan, boolean isFree) {
  /** A pointer on the paper of {@code viewport}. */
  public static Pointer on(Viewport viewport, double x, double y, boolean isFree) {
    Point paper = new Point(x, y);
    return new Pointer(paper, viewport.toPlan(paper), isFree);
  }
}
