package org.jointwright.shape;

/** An upright rectangle that holds something. Inches. */
public record Box(double minX, double minY, double maxX, double maxY) {
  /** The whole plane. */
  public static final Box ALL =
      new Box(
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY);

  /** The smallest box round two points. */
  public static Box of(Point a, Point b) {
    return new Box(
        Math.min(a.x(), b.x()),
        Math.min(a.y(), b.y()),
        Math.max(a.x(), b.x()),
        Math.max(a.y(), b.y()));
  }

  /** This box grown to hold {@code p}. */
  public Box with(Point p) {
    return new Box(
        Math.min(minX, p.x()), Math.min(minY, p.y()), Math.max(maxX, p.x()), Math.max(maxY, p.y()));
  }

  /** This box grown to hold {@code other}. */
  public Box with(Box other) {
    return new Box(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** This box grown by {@code by} inches on each side. */
  public Box grown(double by) {
    return new Box(minX - by, minY - by, maxX + by, maxY + by);
  }

  /** Whether the two boxes share a point. */
  public boolean meets(Box other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }

  /** Whether {@code p} lies in it or on its rim. */
  public boolean holds(Point p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }

  /** From left to right, inches. */
  public double width() {
    return maxX - minX;
  }

  /** From bottom to top, inches. */
  public double height() {
    return maxY - minY;
  }

  /** Its middle. */
  public Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }
}
