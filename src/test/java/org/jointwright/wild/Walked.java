package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jointwright.shape.Edge;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Points at even steps along a line, to ask of each how far it stands from something.
 *
 * @param points the points, from one end to the other
 * @param step how far they stand apart along the line, inches
 */
record Walked(List<Point> points, double step) {
  private static final int MOST = 4000;

  static Walked along(List<Edge> edges) {
    double length = edges.stream().mapToDouble(Edge::length).sum();
    double step = Math.max(1.0 / 16, length / MOST);
    List<Point> points = new ArrayList<>();
    for (Edge e : edges) {
      int n = Math.max(2, (int) Math.ceil(e.length() / step));
      for (int i = 0; i < n; i++) {
        points.add(Planar.JTS.createPoint(Planar.at(e.at((i + 0.5) / n))));
      }
    }
    return new Walked(points, step);
  }

  Walked where(Predicate<Point> holds) {
    return new Walked(points.stream().filter(holds).toList(), step);
  }

  /** How much of it is farther off than that, inches. */
  double over(ToDoubleFunction<Point> off, double limit) {
    return step * points.stream().filter(p -> off.applyAsDouble(p) > limit).count();
  }

  /** The longest run of it, in one stretch, that is no farther off than that, inches. */
  double longestWithin(ToDoubleFunction<Point> off, double limit) {
    int longest = 0;
    int run = 0;
    for (Point p : points) {
      run = off.applyAsDouble(p) <= limit ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return step * longest;
  }

  /** How far points stand from lines; nowhere near where there are none. */
  static ToDoubleFunction<Point> from(List<LineString> lines) {
    if (lines.isEmpty()) {
      return p -> Double.POSITIVE_INFINITY;
    }
    IndexedFacetDistance all =
        new IndexedFacetDistance(
            Planar.JTS.createMultiLineString(lines.toArray(LineString[]::new)));
    return all::distance;
  }

  /** How far points stand from a polygon, nothing within it. */
  static ToDoubleFunction<Point> from(Polygon polygon) {
    IndexedFacetDistance rim = new IndexedFacetDistance(polygon.getExteriorRing());
    Predicate<Point> in = inside(polygon);
    return p -> in.test(p) ? 0 : rim.distance(p);
  }

  /** Whether points lie in a polygon, its rim left out. */
  static Predicate<Point> inside(Polygon polygon) {
    IndexedPointInAreaLocator area = new IndexedPointInAreaLocator(polygon);
    return p -> area.locate(p.getCoordinate()) == Location.INTERIOR;
  }

  static Coordinate[] ends(LineString line) {
    return new Coordinate[] {line.getCoordinateN(0), line.getCoordinateN(line.getNumPoints() - 1)};
  }
}
