package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Whether a slab is one at all: outline, openings and sizes, looked at once more. */
final class SecondReading {
  /** Openings stay this clear of edges and of each other, inches; and what is too near to tell. */
  private static final double CLEAR = 0.5;

  private static final double MARGIN = 0.02;

  private SecondReading() {}

  /** Broken where it must be refused, kept where it must be read. */
  static Verdict of(Slab slab) {
    List<Polygon> rings = new ArrayList<>();
    Verdict verdict = ring(slab.outline().ring().edges(), rings);
    for (Opening o : slab.openings()) {
      verdict = verdict.and(ring(o.outline().ring().edges(), rings));
    }
    if (verdict != Verdict.KEPT) {
      return verdict;
    }
    Polygon whole = rings.getFirst();
    double area = whole.getArea();
    double wide = 2 * area / whole.getLength();
    verdict = Verdict.over(-area, -area, -36, 0.5);
    verdict = verdict.and(Verdict.over(-wide, -wide, -3, 0.05));
    verdict = verdict.and(Verdict.over(area, area, 144e6, 1e5));
    List<IndexedFacetDistance> rims =
        rings.stream().map(r -> new IndexedFacetDistance(r.getExteriorRing())).toList();
    for (int i = 1; i < rings.size(); i++) {
      Polygon hole = rings.get(i);
      double off = rims.getFirst().distance(hole.getExteriorRing());
      verdict =
          verdict.and(
              whole.contains(hole.getInteriorPoint())
                  ? Verdict.over(-off, -off, -CLEAR, MARGIN)
                  : Verdict.BROKEN);
      for (int k = 1; k < i; k++) {
        double apart = apart(hole, rings.get(k), rims.get(k));
        verdict = verdict.and(Verdict.over(-apart, -apart, -CLEAR, MARGIN));
      }
    }
    return verdict;
  }

  /** How far one opening stands from another, nothing where one lies in the other. */
  private static double apart(Polygon one, Polygon other, IndexedFacetDistance rim) {
    boolean within =
        SimplePointInAreaLocator.isContained(one.getCoordinate(), other)
            || SimplePointInAreaLocator.isContained(other.getCoordinate(), one);
    return within ? 0 : rim.distance(one.getExteriorRing());
  }

  private static Verdict ring(List<Edge> edges, List<Polygon> into) {
    List<LineString> sides = new ArrayList<>();
    List<Coordinate> points = new ArrayList<>();
    for (Edge e : edges) {
      List<Coordinate> own = Planar.points(e);
      if (own.getFirst().distance(Planar.at(e.start())) > 0) {
        own = own.reversed();
      }
      sides.add(Planar.JTS.createLineString(own.toArray(Coordinate[]::new)));
      points.addAll(own.subList(0, own.size() - 1));
    }
    points.add(points.getFirst().copy());
    LinearRing ring = Planar.JTS.createLinearRing(points.toArray(Coordinate[]::new));
    Polygon polygon = Planar.JTS.createPolygon(ring);
    into.add(polygon);
    TopologyValidationError error = new IsValidOp(polygon).getValidationError();
    if (error != null) {
      boolean nearCorner =
          edges.stream().anyMatch(e -> Planar.at(e.start()).distance(error.getCoordinate()) < 0.6);
      return nearCorner ? Verdict.UNSURE : Verdict.BROKEN;
    }
    return areApart(sides) ? Verdict.KEPT : Verdict.UNSURE;
  }

  /** Whether sides that are no neighbours stand off each other, and neighbours do not turn back. */
  private static boolean areApart(List<LineString> sides) {
    int n = sides.size();
    for (int i = 0; i < n; i++) {
      if (sides.get(i).getLength() < MARGIN) {
        return false;
      }
      for (int k = i + 1; k < n; k++) {
        boolean neighbours = k == i + 1 || (i == 0 && k == n - 1);
        if (neighbours
            && (runAlong(sides.get(i), sides.get(k)) || runAlong(sides.get(k), sides.get(i)))) {
          return false;
        }
        if (neighbours) {
          LineString a = sides.get(i);
          LineString b = sides.get(k);
          boolean apart =
              n == 2
                  || (a.distance(k == i + 1 ? b.getEndPoint() : b.getStartPoint()) > MARGIN
                      && b.distance(k == i + 1 ? a.getStartPoint() : a.getEndPoint()) > MARGIN);
          if (!apart) {
            return false;
          }
        } else if (sides.get(i).getEnvelopeInternal().distance(sides.get(k).getEnvelopeInternal())
                < MARGIN
            && sides.get(i).isWithinDistance(sides.get(k), MARGIN)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether two sides stay together though they have left their corner. */
  private static boolean runAlong(LineString a, LineString b) {
    IndexedFacetDistance there = new IndexedFacetDistance(b);
    for (Coordinate c : a.getCoordinates()) {
      if (Math.min(
                  b.getCoordinateN(0).distance(c),
                  b.getCoordinateN(b.getNumPoints() - 1).distance(c))
              > 0.45
          && there.distance(Planar.JTS.createPoint(c)) < MARGIN) {
        return true;
      }
    }
    return false;
  }
}
