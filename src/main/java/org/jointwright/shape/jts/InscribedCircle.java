package org.jointwright.shape.jts;

import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The largest circle that fits in a region.
 *
 * @param centre its middle
 * @param radius its radius, inches
 */
public record InscribedCircle(Point centre, double radius) {
  /** How near the circle comes to the largest, inches. */
  private static final double NEAR = 0.02;

  /** The largest circle in a region, which may touch itself; one that crosses itself is refused. */
  public static InscribedCircle of(Region region) {
    return of(Polygons.of(region));
  }

  static InscribedCircle of(Geometry area) {
    MaximumInscribedCircle circle = new MaximumInscribedCircle(area, NEAR);
    Coordinate c = circle.getCenter().getCoordinate();
    return new InscribedCircle(new Point(c.x, c.y), circle.getRadiusLine().getLength());
  }

  /** Its diameter, inches: the width of what it is in. */
  public double diameter() {
    return 2 * radius;
  }
}
