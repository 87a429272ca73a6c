package org.jointwright.shape.jts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Where two regions lie over one another.
 *
 * @param widest the largest circle that lies in both
 * @param corners the points where what lies in both turns, inches; arcs have many
 */
public record Overlap(InscribedCircle widest, List<Point> corners) {
  /** Copies the list. */
  public Overlap {
    corners = List.copyOf(corners);
  }

  /**
   * What two regions have in common; empty where it is nowhere wider than {@code least}.
   *
   * @param least inches; what only touches is 0 wide
   * @throws IllegalArgumentException if either crosses itself
   */
  public static Optional<Overlap> of(Region a, Region b, double least) {
    if (!a.outer().box().meets(b.outer().box())) {
      return Optional.empty();
    }
    Geometry common =
        OverlayNGRobust.overlay(Polygons.of(a), Polygons.of(b), OverlayNG.INTERSECTION);
    Optional<InscribedCircle> widest = Optional.empty();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < common.getNumGeometries(); i++) {
      Geometry part = common.getGeometryN(i);
      if (part.getDimension() < 2 || part.isEmpty()) {
        continue;
      }
      InscribedCircle circle = InscribedCircle.of(part);
      if (circle.diameter() > least) {
        for (Coordinate c : part.getCoordinates()) {
          corners.add(new Point(c.x, c.y));
        }
        widest = widest.filter(w -> w.radius() >= circle.radius()).or(() -> Optional.of(circle));
      }
    }
    return widest.map(w -> new Overlap(w, corners));
  }

  /** How wide what lies in both is where it is widest, inches. */
  public double depth() {
    return widest.diameter();
  }
}
