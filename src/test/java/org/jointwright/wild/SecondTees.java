package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;

/** Tees of straight joints (S1), counted from lines alone. */
final class SecondTees {
  private static final double ON = 1e-3;

  /** Farther than this from all else a meeting is one by itself, inches. */
  private static final double ALONE = 1.2;

  private SecondTees() {}

  /** How many there are; empty where some are too near to other things to tell. */
  static OptionalInt count(Slab slab, SecondFaces faces) {
    List<LineString> lines = new ArrayList<>();
    for (Joint j : slab.joints()) {
      if (j.kind() != JointKind.CONTRACTION || j.path().edges().size() > 1) {
        return OptionalInt.empty();
      }
      lines.add(Planar.line(j.path()));
      if (lines.getLast().getNumPoints() > 2) {
        return OptionalInt.empty();
      }
    }
    if (faces.hairs() > 0 || faces.idle()) {
      return OptionalInt.empty();
    }
    int tees = 0;
    for (LineString line : lines) {
      for (Point end : List.of(line.getStartPoint(), line.getEndPoint())) {
        List<LineString> near =
            lines.stream().filter(l -> l != line && l.distance(end) < ALONE).toList();
        if (near.isEmpty()) {
          continue;
        }
        if (near.size() > 1 || faces.slab().getBoundary().distance(end) < ALONE) {
          return OptionalInt.empty();
        }
        LineString through = near.getFirst();
        boolean isInside =
            through.distance(end) < ON
                && through.getStartPoint().distance(end) > ALONE
                && through.getEndPoint().distance(end) > ALONE;
        double angle = between(line, through);
        if (!isInside || angle < 11) {
          return OptionalInt.empty();
        }
        // A line with one panel on both its sides cuts nothing, and is no stem and no bar.
        long round = faces.panels().stream().filter(p -> p.distance(end) < 0.05).count();
        if (round == 3) {
          tees++;
        } else if (round > 3) {
          return OptionalInt.empty();
        }
      }
    }
    return OptionalInt.of(tees);
  }

  private static double between(LineString a, LineString b) {
    double one = Angle.angle(a.getCoordinateN(0), a.getCoordinateN(1));
    double other = Angle.angle(b.getCoordinateN(0), b.getCoordinateN(1));
    double apart = Math.toDegrees(Angle.diff(one, other));
    return Math.min(apart, 180 - apart);
  }
}
