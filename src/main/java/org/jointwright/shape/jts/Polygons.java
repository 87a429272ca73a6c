package org.jointwright.shape.jts;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Regions as the library behind this package knows them. */
final class Polygons {
  /** Arcs are taken as chords this near, inches. */
  private static final double CHORD_ERROR = 0.01;

  private Polygons() {}

  /** The area of a region, which may touch itself; one that crosses itself is refused. */
  static Geometry of(Region region) {
    GeometryFactory factory = new GeometryFactory();
    List<LinearRing> holes = new ArrayList<>();
    region.holes().forEach(h -> holes.add(ring(factory, h)));
    return sound(
        factory.createPolygon(ring(factory, region.outer()), holes.toArray(LinearRing[]::new)));
  }

  /** A polygon as a region; its arcs stay chords. */
  static Region region(Polygon polygon) {
    List<Ring> holes = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      holes.add(ring(polygon.getInteriorRingN(i)));
    }
    return new Region(ring(polygon.getExteriorRing()), holes);
  }

  private static Ring ring(LinearRing ring) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < ring.getNumPoints() - 1; i++) {
      points.add(new Point(ring.getCoordinateN(i).x, ring.getCoordinateN(i).y));
    }
    return Ring.of(points).counterClockwise();
  }

  /**
   * The same area without touching itself. A box-out whose corner stands on a side pinches what is
   * left of a slab to a point there; that is two lobes with a circle in either.
   */
  private static Geometry sound(Polygon polygon) {
    TopologyValidationError fault = new IsValidOp(polygon).getValidationError();
    if (fault == null) {
      return polygon;
    }
    if (fault.getErrorType() == TopologyValidationError.RING_SELF_INTERSECTION) {
      return polygon.buffer(0);
    }
    throw new IllegalArgumentException("this region crosses itself: " + polygon);
  }

  private static LinearRing ring(GeometryFactory factory, Ring ring) {
    List<Point> points = Chords.round(ring, CHORD_ERROR);
    Coordinate[] coordinates = new Coordinate[points.size() + 1];
    for (int i = 0; i <= points.size(); i++) {
      Point p = points.get(i % points.size());
      coordinates[i] = new Coordinate(p.x(), p.y());
    }
    return factory.createLinearRing(coordinates);
  }
}
