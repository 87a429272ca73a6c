package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/**
 * Where it would likely crack without a joint at an inside corner: on the line that halves the
 * corner, 135 degrees from both sides of a square one (common practice, no source; not computed).
 */
final class CrackMarks {
  /** How far it is drawn, inches: the crack's way farther on is anybody's guess. */
  private static final double FAR = 60;

  private CrackMarks() {}

  static List<Mark> of(Plan plan, String slabId, Joint joint, View view) {
    List<Mark> marks = new ArrayList<>();
    if (joint.purpose() != Purpose.INSIDE_CORNER) {
      return marks;
    }
    Slab slab = plan.slab(slabId).orElseThrow();
    List<Ring> rings = new ArrayList<>(List.of(slab.outline().ring()));
    for (Opening o : slab.openings()) {
      rings.add(o.outline().ring().counterClockwise().reversed());
    }
    for (Ring ring : rings) {
      for (Point end : List.of(joint.path().start(), joint.path().end())) {
        crack(ring, rings, end).ifPresent(p -> marks.add(line(p, view)));
      }
    }
    return marks;
  }

  private static Mark line(Path path, View view) {
    return new Mark.Line(view.on(path), 2.2, List.of(7.0, 5.0), Role.CRACK);
  }

  /** The likely crack from a corner of {@code ring} where the concrete turns inwards. */
  private static java.util.Optional<Path> crack(Ring ring, List<Ring> all, Point corner) {
    List<Edge> edges = ring.edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge after = edges.get(i);
      Edge before = edges.get((i + edges.size() - 1) % edges.size());
      Point in = before.direction(1);
      Point out = after.direction(0);
      boolean isInside = after.start().distance(corner) < 0.5 && in.cross(out) < -0.1;
      if (isInside) {
        // The concrete is on the left; half way between the two sides, away from the corner.
        Point way = in.minus(out).unit();
        Segment line = new Segment(corner.plus(way), corner.plus(way.times(FAR)));
        double to = 1;
        for (Ring r : all) {
          for (Edge e : r.edges()) {
            for (Crossing c : Crossing.of(line, e)) {
              to = Math.min(to, c.first());
            }
          }
        }
        return to < 0.02
            ? java.util.Optional.empty()
            : java.util.Optional.of(Path.straight(corner, line.at(to)));
      }
    }
    return java.util.Optional.empty();
  }
}
