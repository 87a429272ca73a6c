package org.jointwright.wild;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The panels of a slab as another finds them: every line noded with every other, and the faces of
 * that. Its joints' ends are drawn out by a hair, so that they reach what they end on.
 *
 * @param slab the slab
 * @param panels its faces, largest first
 * @param hairs how many there are that are too thin to be panels
 * @param idle whether some piece of a joint has one panel on both its sides
 */
record SecondFaces(Polygon slab, List<Polygon> panels, int hairs, boolean idle) {
  private static final double HAIR_AREA = 0.144;
  private static final double HAIR_WIDTH = 1.0 / 16;
  private static final double REACH = 0.02;

  /**
   * Lines are noded on a grid of a millionth of an inch, as fast and never in need of a second try.
   */
  private static final PrecisionModel FINE = new PrecisionModel(1e6);

  @SuppressWarnings("unchecked")
  static SecondFaces of(Slab slab) {
    Polygon whole = Planar.polygon(slab.region());
    List<Geometry> lines = new ArrayList<>();
    Corners.rings(whole).forEach(lines::add);
    for (Joint j : slab.joints()) {
      lines.add(drawnOut(Planar.line(j.path())));
    }
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(UnaryUnionNG.union(Planar.JTS.buildGeometry(lines), FINE));
    IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(whole);
    List<Polygon> panels = new ArrayList<>();
    int hairs = 0;
    for (Polygon p : (Collection<Polygon>) polygonizer.getPolygons()) {
      if (inside.locate(p.getInteriorPoint().getCoordinate()) != Location.EXTERIOR) {
        double width = new MinimumDiameter(p).getLength();
        if (p.getArea() < 2 * HAIR_AREA || width < 2 * HAIR_WIDTH) {
          hairs++;
        } else {
          panels.add(p);
        }
      }
    }
    boolean idle =
        Stream.of(polygonizer.getCutEdges(), polygonizer.getDangles())
            .flatMap(l -> ((Collection<Geometry>) l).stream())
            .anyMatch(l -> l.getLength() > 2 * REACH && whole.intersects(l));
    return new SecondFaces(whole, List.copyOf(panels), hairs, idle);
  }

  /**
   * The panels as they were cut, to be measured anew: the engine leaves ends up to 1/2 in short of
   * what they reach, and that is no matter of plain geometry.
   */
  static SecondFaces asCut(SlabLayout laid) {
    List<Polygon> panels =
        laid.panels().stream()
            .map(p -> Planar.polygon(p.region()))
            .filter(p -> p.getArea() >= 2 * HAIR_AREA)
            .filter(p -> new MinimumDiameter(p).getLength() >= 2 * HAIR_WIDTH)
            .toList();
    return new SecondFaces(Planar.polygon(laid.slab().region()), panels, 0, /* idle= */ true);
  }

  private static LineString drawnOut(LineString line) {
    Coordinate[] points = line.copy().getCoordinates();
    int n = points.length;
    Coordinate first = beyond(points[1], points[0]);
    Coordinate last = beyond(points[n - 2], points[n - 1]);
    points[0] = first;
    points[n - 1] = last;
    return Planar.JTS.createLineString(points);
  }

  private static Coordinate beyond(Coordinate from, Coordinate to) {
    double by = 1 + REACH / from.distance(to);
    return new Coordinate(from.x + (to.x - from.x) * by, from.y + (to.y - from.y) * by);
  }
}
