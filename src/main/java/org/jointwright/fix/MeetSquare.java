package org.jointwright.fix;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Straight;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.practice.Angles;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Turns a joint square to what it meets, about one of its ends or its middle; or takes its end to
 * the corner hard by.
 */
final class MeetSquare implements Remedy {
  /** A corner farther off than this is not hard by, inches. */
  private static final double HARD_BY = 48;

  /** How far inside a limit a joint is turned to, radians: a quarter of a degree. */
  private static final double INSIDE = Math.toRadians(0.25);

  /** A turn over this makes another joint of it, the cosine: about 75 degrees. */
  private static final double MOST_TURN = 0.26;

  @Override
  public List<Fix> proposals(Broken broken) {
    Point at = broken.finding().at();
    Set<Joint> joints = new LinkedHashSet<>();
    broken.joint().ifPresent(joints::add);
    for (Floor.Line l : broken.floor().at(at)) {
      if (l.source() instanceof Source.OnJoint j) {
        broken.floor().joint(j.joint()).ifPresent(joints::add);
      }
    }
    List<Fix> fixes = new ArrayList<>();
    for (Joint j : joints) {
      Optional<Straight> line = Straight.of(broken.floor(), j);
      line.ifPresent(l -> turns(broken, l, fixes));
      line.filter(l -> l.joints().size() > 1)
          .flatMap(l -> Straight.alone(j))
          .ifPresent(l -> turns(broken, l, fixes));
    }
    return fixes;
  }

  private static void turns(Broken broken, Straight line, List<Fix> fixes) {
    List<Point> ends = line.ends();
    Point middle = ends.getFirst().towards(ends.getLast(), 0.5);
    List<Point> square = headings(broken.floor(), line, ends);
    List<Point> headings = new ArrayList<>(square);
    square.forEach(h -> justEnough(broken, line, h).ifPresent(headings::add));
    for (Point heading : headings) {
      for (Point pivot : List.of(ends.getFirst(), ends.getLast(), middle)) {
        Shifts.turned(broken, line, pivot, heading, "fix.turn.square").ifPresent(fixes::add);
      }
    }
    for (Floor.Line rim : broken.floor().rims()) {
      Point corner = rim.edge().start();
      for (int i = 0; i < 2; i++) {
        double off = corner.distance(ends.get(i));
        Point other = ends.get(1 - i);
        // A short joint from a corner has it hard by its other end as well.
        if (off > Floor.ON && off <= HARD_BY && corner.distance(other) > Floor.ON) {
          Shifts.turned(broken, line, other, corner.minus(other).unit(), "fix.turn.toCorner")
              .ifPresent(fixes::add);
          Shifts.through(broken, line, corner).ifPresent(fixes::add);
        }
      }
    }
  }

  /** The heading as near to a line's own as the limit of its angle lets it be. */
  private static Optional<Point> justEnough(Broken broken, Straight line, Point square) {
    double most =
        switch (broken.finding().rule()) {
          case "S5" -> Angles.EDGE.value();
          case "M4" -> 90 - Angles.ACUTE.value();
          default -> 0;
        };
    Point u = line.heading();
    double off = Math.atan2(square.cross(u), square.dot(u));
    double kept = Math.toRadians(most) - INSIDE;
    return most > 0 && Math.abs(off) > kept
        ? Optional.of(square.turned(Math.copySign(kept, off)))
        : Optional.empty();
  }

  /** The headings in which a line would be square to what it meets at an end. */
  private static List<Point> headings(Floor floor, Straight line, List<Point> ends) {
    List<Point> headings = new ArrayList<>();
    Point u = line.heading();
    for (Point end : ends) {
      for (Floor.Line l : floor.at(end)) {
        if (!(l.source() instanceof Source.OnJoint j && line.ids().contains(j.joint()))) {
          Edge e = l.edge();
          Point way =
              e instanceof Arc a
                  ? end.minus(a.centre()).unit()
                  : e.direction(e.nearest(end)).left();
          Point on = way.dot(u) < 0 ? way.times(-1) : way;
          boolean isNew = headings.stream().allMatch(h -> Math.abs(h.cross(on)) > 0.005);
          if (isNew && on.dot(u) > MOST_TURN && Math.abs(on.cross(u)) > 0.005) {
            headings.add(on);
          }
        }
      }
    }
    return headings;
  }
}
