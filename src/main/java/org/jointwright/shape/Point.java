package org.jointwright.shape;

/**
 * A point, or the vector from the origin to it.
 *
 * @param x inches to the right
 * @param y inches up
 */
public record Point(double x, double y) {
  /** Refuses coordinates that are not finite. */
  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a point must be finite, not (" + x + ", " + y + ")");
    }
  }

  /** The sum of both as vectors. */
  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  /** The vector from {@code other} to this point. */
  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  /** This vector times {@code factor}. */
  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  /** The scalar product. */
  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** The cross product's length; positive when {@code other} lies counter-clockwise of this. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  /** The vector's length in inches. */
  public double norm() {
    return Math.sqrt(x * x + y * y);
  }

  /** The distance to {@code other} in inches. */
  public double distance(Point other) {
    double dx = x - other.x;
    double dy = y - other.y;
    // Not hypot: plans are nowhere near the sizes it guards against, and it is many times slower.
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The direction of this vector, radians in (-pi, pi]. */
  public double angle() {
    return Math.atan2(y, x);
  }

  /** This vector at length one; the zero vector is refused. */
  public Point unit() {
    double n = norm();
    if (n == 0) {
      throw new IllegalArgumentException("the zero vector has no direction");
    }
    return new Point(x / n, y / n);
  }

  /** This vector turned a quarter counter-clockwise. */
  public Point left() {
    return new Point(-y, x);
  }

  /** This vector turned counter-clockwise by {@code radians}. */
  public Point turned(double radians) {
    double c = Math.cos(radians);
    double s = Math.sin(radians);
    return new Point(c * x - s * y, s * x + c * y);
  }

  /** The point a share {@code t} of the way to {@code other}: 0 here, 1 there. */
  public Point towards(Point other, double t) {
    return new Point(x + t * (other.x - x), y + t * (other.y - y));
  }
}
