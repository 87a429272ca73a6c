package org.jointwright.wild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LineStringExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Straight joints drawn at random: from edge to edge, or from an edge to a joint before. */
final class WildJoints {
  /**
   * An end stands no nearer than this to a corner or to another end, inches: the program draws ends
   * together that are meant as one, and then a second opinion on where they stand means nothing.
   */
  private static final double APART = 1.25;

  private static final double HARD_BY = 0.08;

  private static final int MOST = 9;
  private static final int TRIES = 14;

  private WildJoints() {}

  /** None where the outline crosses itself. */
  static List<Joint> across(Slab slab, SplittableRandom random) {
    Polygon whole = Planar.polygon(slab.region());
    if (!whole.isValid()) {
      return List.of();
    }
    List<Coordinate> vertices = new ArrayList<>();
    slab.outline().vertices().forEach(v -> vertices.add(Planar.at(v.at())));
    slab.openings()
        .forEach(o -> o.outline().vertices().forEach(v -> vertices.add(Planar.at(v.at()))));
    List<LineString> laid = new ArrayList<>();
    Box box = slab.outline().ring().box();
    int wanted = random.nextInt(MOST + 1);
    for (int i = 0; i < TRIES && laid.size() < wanted; i++) {
      for (LineString piece : pieces(whole, line(box, random))) {
        LineString joint = random.nextInt(3) == 0 ? upToTheFirst(piece, laid) : piece;
        if (laid.size() < wanted && fits(joint, whole, vertices, laid)) {
          laid.add(joint);
        }
      }
    }
    List<Joint> joints = new ArrayList<>();
    for (LineString l : laid) {
      Path path = Path.straight(point(l.getCoordinateN(0)), point(l.getCoordinateN(1)));
      joints.add(Joint.of("J" + (joints.size() + 1), JointKind.CONTRACTION, path, Purpose.SPACING));
    }
    return joints;
  }

  private static LineString line(Box box, SplittableRandom random) {
    Point through =
        new Point(
            box.minX() + box.width() * random.nextDouble(),
            box.minY() + box.height() * random.nextDouble());
    double angle =
        random.nextInt(2) == 0 ? Math.PI / 2 * random.nextInt(2) : Math.PI * random.nextDouble();
    Point reach = new Point(box.width() + box.height(), 0).turned(angle);
    return Planar.line(Path.straight(through.minus(reach), through.plus(reach)));
  }

  private static List<LineString> pieces(Polygon whole, LineString line) {
    Geometry inside = OverlayNGRobust.overlay(whole, line, OverlayNG.INTERSECTION);
    List<LineString> pieces = new ArrayList<>();
    for (Object o : LineStringExtracter.getLines(inside)) {
      LineString found = (LineString) o;
      if (found.isEmpty()) {
        continue;
      }
      Coordinate[] ends = {found.getCoordinateN(0), found.getCoordinateN(found.getNumPoints() - 1)};
      pieces.add(Planar.JTS.createLineString(ends));
    }
    // JTS hands them out in the order of a hash table.
    pieces.sort(Comparator.comparing(l -> l.getCoordinateN(0)));
    return pieces;
  }

  /** The piece from its start to the first joint that it meets. */
  private static LineString upToTheFirst(LineString piece, List<LineString> laid) {
    Coordinate start = piece.getCoordinateN(0);
    Coordinate end = piece.getCoordinateN(1);
    for (LineString l : laid) {
      Geometry met = OverlayNGRobust.overlay(piece, l, OverlayNG.INTERSECTION);
      if (!met.isEmpty() && met.getCoordinate().distance(start) < end.distance(start)) {
        end = met.getCoordinate();
      }
    }
    return Planar.JTS.createLineString(new Coordinate[] {start, end});
  }

  private static boolean fits(
      LineString joint, Polygon whole, List<Coordinate> vertices, List<LineString> laid) {
    if (joint.getLength() < 4 * APART) {
      return false;
    }
    for (int end = 0; end < 2; end++) {
      Coordinate at = joint.getCoordinateN(end);
      for (LineString l : laid) {
        if (l.getCoordinateN(0).distance(at) < APART || l.getCoordinateN(1).distance(at) < APART) {
          return false;
        }
      }
    }
    for (int end = 0; end < 2; end++) {
      double off = whole.getBoundary().distance(joint.getPointN(end));
      if (off < APART && off > 1e-3) {
        return false;
      }
    }
    for (LineString l : laid) {
      for (int end = 0; end < 2; end++) {
        double off = l.getPointN(end).distance(joint);
        if (off < APART && off > 1e-6) {
          return false;
        }
        off = joint.getPointN(end).distance(l);
        if (off < APART && off > 1e-6) {
          return false;
        }
      }
    }
    // However little it turns there, a joint hard by a vertex is drawn onto it.
    LineSegment line = new LineSegment(joint.getCoordinateN(0), joint.getCoordinateN(1));
    return Corners.areFarFrom(joint, whole, APART)
        && vertices.stream().noneMatch(v -> line.distance(v) < HARD_BY);
  }

  private static Point point(Coordinate c) {
    return new Point(c.x, c.y);
  }
}
