package org.jointwright.cases;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Opening;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * What a layout is measured against: its finished lines noded and made into polygons by the library
 * alone, with no thought of where they should run.
 */
final class Bare {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** How far a chord may leave its arc, inches: the half 1/64 in that a sheet can show. */
  private static final double SAG = 1 / 128.0;

  private Bare() {}

  /** The lines of a layout: outlines, openings, box-outs and joints, arcs as chords. */
  static MultiLineString lines(Layout layout) {
    List<LineString> found = new ArrayList<>();
    for (SlabLayout s : layout.slabs()) {
      List<Edge> edges = new ArrayList<>(s.slab().outline().ring().edges());
      for (Opening o : s.slab().openings()) {
        edges.addAll(o.outline().ring().edges());
      }
      for (Joint j : s.joints()) {
        if (j.kind() != JointKind.ISOLATION || !isOn(edges, j)) {
          found.addAll(strings(j.path().edges()));
        }
      }
      found.addAll(strings(edges));
    }
    return FACTORY.createMultiLineString(found.toArray(LineString[]::new));
  }

  private static boolean isOn(List<Edge> edges, Joint joint) {
    Point middle = joint.path().edges().getFirst().at(0.5);
    return edges.stream().anyMatch(e -> e.distance(middle) < 0.1);
  }

  private static List<LineString> strings(List<Edge> edges) {
    return edges.stream().map(Bare::string).toList();
  }

  private static LineString string(Edge edge) {
    int n = 1;
    if (edge instanceof Arc a) {
      n = (int) Math.ceil(Math.abs(a.sweep()) / (2 * Math.acos(1 - SAG / a.radius())));
    }
    Coordinate[] all = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      Point p = edge.at((double) i / n);
      all[i] = new Coordinate(p.x(), p.y());
    }
    return FACTORY.createLineString(all);
  }

  /** The polygons that lines enclose. */
  static Collection<?> polygons(MultiLineString lines) {
    Geometry noded = OverlayNGRobust.union(lines);
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(noded);
    return polygonizer.getPolygons();
  }
}
