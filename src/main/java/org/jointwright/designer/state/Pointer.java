package org.jointwright.designer.state;

import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;

/**
 * Where the pointer is.
 *
 * @param paper pixels on the paper
 * @param plan the point of the plan there
 * @param isFree whether the hand wants no help from marks: Alt is held
 */
public record Pointer(Point paper, Point plan, boolean isFree) {
  /** A hand that moved less meant to click; pixels. */
  private static final double SLACK = 4;

  private static final double CENTIMETRE = 10 / 25.4;

  /** The finest that a free hand is followed, inches. */
  private static final double FINE = 1.0 / 16;

  /** Whether a hand that pressed at {@code grip} has moved so little that it meant to click. */
  public boolean isClickAt(Pointer grip) {
    return paper.distance(grip.paper()) < SLACK;
  }

  /**
   * The step in which a hand moves things in a plan, inches: a whole inch, or a centimetre in a
   * metric plan; finer where it is free.
   */
  public double step(Plan of) {
    return isFree ? FINE : wholeStep(of);
  }

  /** A way, or a place, in whole steps right and up. */
  public static Point stepped(Point by, double step) {
    return new Point(Math.rint(by.x() / step) * step, Math.rint(by.y() / step) * step);
  }

  /** The same step for a hand that is not free. */
  public static double wholeStep(Plan of) {
    return of.unit().isMetric() ? CENTIMETRE : 1;
  }

  /** A pointer on the paper of {@code viewport}. */
  public static Pointer on(Viewport viewport, double x, double y, boolean isFree) {
    Point paper = new Point(x, y);
    return new Pointer(paper, viewport.toPlan(paper), isFree);
  }
}
