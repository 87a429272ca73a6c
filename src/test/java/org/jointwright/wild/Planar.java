package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Our shapes as those of JTS, arcs as fine chords; an arc run either way gives the same points. */
final class Planar {
  static final GeometryFactory JTS = new GeometryFactory();

  private Planar() {}

  /** How far chords stand off an arc at most, inches. */
  static double off(Arc arc) {
    return arc.radius() > 40 ? 1e-3 : 1e-4;
  }

  static Coordinate at(Point p) {
    return new Coordinate(p.x(), p.y());
  }

  static Polygon polygon(Region region) {
    LinearRing[] holes = region.holes().stream().map(Planar::ring).toArray(LinearRing[]::new);
    return JTS.createPolygon(ring(region.outer()), holes);
  }

  static LinearRing ring(Ring ring) {
    List<Coordinate> points = along(ring.edges());
    points.add(points.getFirst().copy());
    return JTS.createLinearRing(points.toArray(Coordinate[]::new));
  }

  static LineString line(Path path) {
    List<Coordinate> points = along(path.edges());
    points.add(at(path.end()));
    return JTS.createLineString(points.toArray(Coordinate[]::new));
  }

  private static List<Coordinate> along(List<Edge> edges) {
    List<Coordinate> points = new ArrayList<>();
    for (Edge e : edges) {
      List<Coordinate> own = points(e);
      points.addAll(own.subList(0, own.size() - 1));
    }
    return points;
  }

  /** The points of an edge, both ends too. */
  static List<Coordinate> points(Edge edge) {
    return switch (edge) {
      case Segment s -> List.of(at(s.start()), at(s.end()));
      case Arc a -> isForward(a) ? chords(a) : chords(a.reversed()).reversed();
    };
  }

  private static boolean isForward(Arc a) {
    return a.start().x() < a.end().x()
        || (a.start().x() == a.end().x() && a.start().y() <= a.end().y());
  }

  private static List<Coordinate> chords(Arc a) {
    double step = 2 * Math.acos(1 - Math.min(0.5, off(a) / a.radius()));
    int n = Math.max(2, (int) Math.ceil(Math.abs(a.sweep()) / step));
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      points.add(at(a.at((double) i / n)));
    }
    return points;
  }
}
