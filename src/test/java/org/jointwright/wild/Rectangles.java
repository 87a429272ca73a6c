package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Rectangles round a polygon, flush with each side of its hull.
 *
 * @param all a length and a width each, inches, the longer first
 */
record Rectangles(List<double[]> all) {
  static Rectangles round(Polygon polygon) {
    // Not polygon.convexHull(): in JTS 1.20 that may sort the polygon's own points.
    Geometry hull = new ConvexHull(polygon.getCoordinates(), polygon.getFactory()).getConvexHull();
    Coordinate[] c = hull.getCoordinates();
    List<double[]> all = new ArrayList<>();
    for (int i = 0; i + 1 < c.length; i++) {
      double length = c[i].distance(c[i + 1]);
      double cos = (c[i + 1].x - c[i].x) / length;
      double sin = -(c[i + 1].y - c[i].y) / length;
      // About the side's own start, so that a slab far off loses no figures.
      AffineTransformation turn = AffineTransformation.rotationInstance(sin, cos, c[i].x, c[i].y);
      Envelope box = turn.transform(hull).getEnvelopeInternal();
      all.add(
          new double[] {
            Math.max(box.getWidth(), box.getHeight()), Math.min(box.getWidth(), box.getHeight())
          });
    }
    return new Rectangles(all);
  }

  /** Those whose area is within a share of the least. */
  List<double[]> within(double share) {
    double least = all.stream().mapToDouble(r -> r[0] * r[1]).min().orElseThrow();
    return all.stream().filter(r -> r[0] * r[1] <= least * share).toList();
  }

  /** The shortest of the lengths of those within a share of the least. */
  double length(double share) {
    return within(share).stream().mapToDouble(r -> r[0]).min().orElseThrow();
  }

  /** The squarest aspect of those within a share of the least. */
  double aspect(double share) {
    return within(share).stream().mapToDouble(r -> r[0] / r[1]).min().orElseThrow();
  }

  /** The area of the squarest of those within a share of the least. */
  double area(double share) {
    double squarest = aspect(share);
    return within(share).stream()
        .filter(r -> r[0] / r[1] <= squarest * (1 + 1e-9))
        .mapToDouble(r -> r[0] * r[1])
        .min()
        .orElseThrow();
  }
}
