package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.kdtree.KdTree;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Inside corners (M3) seen from polygons alone: over 185 degrees and one for rounding, 135 degrees
 * of concave turn and one more at a radius under 5 ft. Sure only of corners that stand alone, since
 * what is near each other counts as one, is a jog, or is served by one joint.
 */
final class SecondTurns {
  private static final double INSIDE = 6;
  private static final double CONCAVE = 136;
  private static final double TIGHT = 60;
  private static final double ROUNDED = 6.5;

  /** How far off a turn may be, degrees. */
  private static final double MARGIN = 1.5;

  /** Nearer places along an edge may make a jog or a corner with this one, inches. */
  private static final double ALONE = 2.2;

  /** Nearer inside corners of the concrete may be served by the same joint, inches. */
  private static final double TOGETHER = 7;

  /** A turn of the concrete that may count as an inside corner, degrees. */
  private static final double SOME_TURN = 3;

  private static final double ON = 2.5e-3;

  private record Bow(double radius, IndexedFacetDistance line) {}

  private final KdTree places = new KdTree(1e-6);
  private final KdTree turns = new KdTree(1e-6);
  private final List<Bow> bows = new ArrayList<>();
  private boolean rounded;

  SecondTurns(Slab slab) {
    addEdges(slab.outline().ring());
    slab.openings().forEach(o -> addEdges(o.outline().ring()));
    for (Joint j : slab.joints()) {
      places.insert(Planar.at(j.path().start()));
      places.insert(Planar.at(j.path().end()));
    }
  }

  private void addEdges(Ring ring) {
    List<Edge> edges = ring.edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge in = edges.get((i + edges.size() - 1) % edges.size());
      Edge out = edges.get(i);
      Coordinate at = Planar.at(out.start());
      places.insert(at);
      double cross = in.direction(1).cross(out.direction(0));
      double turn = Math.toDegrees(Math.atan2(cross, in.direction(1).dot(out.direction(0))));
      if (Math.abs(turn) > SOME_TURN) {
        turns.insert(at);
      }
      if (out instanceof Arc a) {
        rounded |= a.radius() < ROUNDED;
        GeometryFactory jts = Planar.JTS;
        LineString line = jts.createLineString(Planar.points(a).toArray(Coordinate[]::new));
        bows.add(new Bow(a.radius(), new IndexedFacetDistance(line)));
      }
    }
  }

  /** Whether a panel keeps an inside corner or a tight concave curve. */
  Verdict on(Polygon panel) {
    boolean unsure = false;
    for (LinearRing ring : Corners.rings(panel)) {
      Verdict verdict = on(ring, ring == panel.getExteriorRing());
      if (verdict == Verdict.BROKEN) {
        return verdict;
      }
      unsure |= verdict == Verdict.UNSURE;
    }
    return unsure ? Verdict.UNSURE : Verdict.KEPT;
  }

  private Verdict on(LinearRing ring, boolean outer) {
    int n = ring.getNumPoints() - 1;
    double sign = Orientation.isCCW(ring.getCoordinates()) == outer ? -1 : 1;
    boolean unsure = false;
    double curving = 0;
    double[] concave = new double[n];
    int[] bow = new int[n];
    for (int i = 0; i < n; i++) {
      concave[i] = sign * Corners.turn(ring, i);
      bow[i] = bowOf(ring, i);
    }
    for (int i = 0; i < n; i++) {
      boolean alongOne = bow[i] >= 0 && bow[i] == bow[(i + n - 1) % n];
      if (alongOne) {
        curving += bows.get(bow[i]).radius() < TIGHT + 1 ? Math.max(0, concave[i]) : 0;
      } else {
        curving += Math.max(0, concave[i]);
        if (concave[i] > INSIDE + MARGIN && !rounded && isAlone(ring, i)) {
          return Verdict.BROKEN;
        }
        unsure |= nearby(ring, concave, i) > INSIDE - MARGIN;
      }
    }
    if (longestBow(ring, concave, bow) > CONCAVE + MARGIN) {
      return Verdict.BROKEN;
    }
    return unsure || curving > CONCAVE - MARGIN ? Verdict.UNSURE : Verdict.KEPT;
  }

  /** All that turns inwards within a hair along the ring. */
  private static double nearby(LinearRing ring, double[] concave, int i) {
    int n = concave.length;
    double way = 0;
    double sum = 0;
    for (int k = 0; k < n && way < 0.6; k++) {
      sum += Math.max(0, concave[(i + k) % n]);
      way += ring.getCoordinateN((i + k) % n).distance(ring.getCoordinateN((i + k) % n + 1));
    }
    return sum;
  }

  /** The arc that a side of the ring lies on, -1 for none. */
  private int bowOf(LinearRing ring, int i) {
    LineString side =
        Planar.JTS.createLineString(
            new Coordinate[] {ring.getCoordinateN(i), ring.getCoordinateN(i + 1)});
    for (int b = 0; b < bows.size(); b++) {
      IndexedFacetDistance line = bows.get(b).line();
      if (line.isWithinDistance(side, ON)
          && line.distance(side.getStartPoint()) < ON
          && line.distance(side.getEndPoint()) < ON
          && line.distance(side.getCentroid()) < ON) {
        return b;
      }
    }
    return -1;
  }

  /** The longest unbroken turn along one concave arc of a small radius, degrees. */
  private double longestBow(LinearRing ring, double[] concave, int[] bow) {
    int n = concave.length;
    double longest = 0;
    double run = 0;
    for (int i = 0; i < 2 * n; i++) {
      int k = i % n;
      boolean small = bow[k] >= 0 && bows.get(bow[k]).radius() < TIGHT - 1;
      boolean goesOn = small && bow[k] == bow[(k + n - 1) % n] && concave[k] > 0;
      run = goesOn ? run + concave[k] : 0;
      longest = Math.max(longest, run);
      if (run > 400) {
        break;
      }
    }
    return longest;
  }

  private boolean isAlone(LinearRing ring, int i) {
    Coordinate at = ring.getCoordinateN(i);
    int n = ring.getNumPoints() - 1;
    for (int k = 0; k < n; k++) {
      if (k != i
          && ring.getCoordinateN(k).distance(at) < ALONE
          && Math.abs(Corners.turn(ring, k)) > Corners.CHORD_TURN) {
        return false;
      }
    }
    return !hasOther(places, at, ALONE) && !hasOther(turns, at, TOGETHER);
  }

  private static boolean hasOther(KdTree tree, Coordinate at, double within) {
    Envelope box = new Envelope(at);
    box.expandBy(within);
    boolean[] found = new boolean[1];
    tree.query(box, node -> found[0] |= node.getCoordinate().distance(at) > 0.05);
    return found[0];
  }
}
