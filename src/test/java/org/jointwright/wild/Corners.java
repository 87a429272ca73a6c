package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Corners of polygons, the fine chords of arcs left out. */
final class Corners {
  /** Chords of an arc turn by less than this from one to the next, degrees. */
  static final double CHORD_TURN = 1.2;

  private Corners() {}

  /** Whether both ends of a joint stand off every corner of the slab. */
  static boolean areFarFrom(LineString joint, Polygon whole, double by) {
    for (LinearRing ring : rings(whole)) {
      for (Coordinate c : of(ring)) {
        for (int end = 0; end < 2; end++) {
          Point at = joint.getPointN(end);
          if (at.getCoordinate().distance(c) < by) {
            return false;
          }
        }
      }
    }
    return true;
  }

  static List<LinearRing> rings(Polygon p) {
    List<LinearRing> rings = new ArrayList<>(List.of(p.getExteriorRing()));
    for (int i = 0; i < p.getNumInteriorRing(); i++) {
      rings.add(p.getInteriorRingN(i));
    }
    return rings;
  }

  /** The places where a ring turns by more than the chords of an arc do. */
  static List<Coordinate> of(LinearRing ring) {
    List<Coordinate> corners = new ArrayList<>();
    int n = ring.getNumPoints() - 1;
    for (int i = 0; i < n; i++) {
      if (Math.abs(turn(ring, i)) > CHORD_TURN) {
        corners.add(ring.getCoordinateN(i));
      }
    }
    return corners;
  }

  /** The turn at a point of a ring, degrees, to the left positive. */
  static double turn(LinearRing ring, int i) {
    int n = ring.getNumPoints() - 1;
    Coordinate before = ring.getCoordinateN((i + n - 1) % n);
    Coordinate at = ring.getCoordinateN(i);
    Coordinate after = ring.getCoordinateN((i + 1) % n);
    return Math.toDegrees(Angle.normalize(Angle.angle(at, after) - Angle.angle(before, at)));
  }
}
