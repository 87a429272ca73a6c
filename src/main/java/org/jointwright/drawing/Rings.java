package org.jointwright.drawing;

import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** Simple closed shapes on a medium. */
public final class Rings {
  private Rings() {}

  /** A circle. */
  public static Ring circle(Point centre, double radius) {
    Point a = centre.plus(new Point(radius, 0));
    Point b = centre.minus(new Point(radius, 0));
    return new Ring(List.of(new Arc(a, b, centre, Math.PI), new Arc(b, a, centre, Math.PI)));
  }

  /** An upright rectangle. */
  public static Ring box(double x, double y, double width, double height) {
    return Ring.of(
        List.of(
            new Point(x, y),
            new Point(x + width, y),
            new Point(x + width, y + height),
            new Point(x, y + height)));
  }

  /** An upright rectangle with rounded corners; a radius of 0 or less gives a plain one. */
  public static Ring rounded(double x, double y, double width, double height, double radius) {
    double r = Math.min(radius, Math.min(width, height) / 2 - 1e-6);
    if (r <= 0) {
      return box(x, y, width, height);
    }
    double right = x + width;
    double low = y + height;
    return new Ring(
        List.<Edge>of(
            new Segment(new Point(x + r, y), new Point(right - r, y)),
            quarter(new Point(right - r, y), new Point(right, y + r), right - r, y + r),
            new Segment(new Point(right, y + r), new Point(right, low - r)),
            quarter(new Point(right, low - r), new Point(right - r, low), right - r, low - r),
            new Segment(new Point(right - r, low), new Point(x + r, low)),
            quarter(new Point(x + r, low), new Point(x, low - r), x + r, low - r),
            new Segment(new Point(x, low - r), new Point(x, y + r)),
            quarter(new Point(x, y + r), new Point(x + r, y), x + r, y + r)));
  }

  private static Arc quarter(Point from, Point to, double cx, double cy) {
    return new Arc(from, to, new Point(cx, cy), Math.PI / 2);
  }
}
