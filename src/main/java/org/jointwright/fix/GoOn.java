package org.jointwright.fix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jointwright.fix.line.Chalk;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Stop;
import org.jointwright.fix.name.Target;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * A joint that goes on beyond a tee, turned: square to what it meets there, or to where other
 * joints end. A crack that runs on from the tee is caught by it, though it is no straight line.
 */
final class GoOn implements Remedy {
  /** The cosine of the most that it may turn: 50 degrees. */
  private static final double MOST_TURN = Math.cos(Math.toRadians(50));

  @Override
  public List<Fix> proposals(Broken broken) {
    return broken.joint().map(j -> beyond(broken, j)).orElse(List.of());
  }

  private static List<Fix> beyond(Broken broken, Joint joint) {
    Point at = broken.finding().at();
    Path path = joint.path();
    boolean atEnd = path.end().distance(at) <= path.start().distance(at);
    Point end = atEnd ? path.end() : path.start();
    Point way =
        atEnd
            ? path.edges().getLast().direction(1)
            : path.edges().getFirst().direction(0).times(-1);
    Map<Path, Fix> fixes = new LinkedHashMap<>();
    for (Stop stop : stops(broken.floor(), end, way)) {
      double far = stop.at().distance(end);
      if (far >= Chalk.SHORTEST && stop.at().minus(end).dot(way) >= MOST_TURN * far) {
        Path on = Path.straight(end, stop.at());
        Target to = broken.target(stop);
        fixes.putIfAbsent(
            on,
            Fix.of(
                "fix.goOn",
                "fix.did.goOn",
                List.of(broken.name(joint), to.name(), to.kind()),
                broken.redraft().adding(JointKind.CONTRACTION, on, Purpose.SPACING).edit()));
      }
    }
    return List.copyOf(fixes.values());
  }

  /** Where it may end: square on each line of the floor, then at the ends of joints in sight. */
  private static List<Stop> stops(Floor floor, Point from, Point way) {
    List<Stop> stops = new ArrayList<>();
    for (Floor.Line line : floor.lines()) {
      Point foot = line.edge().at(line.edge().nearest(from));
      if (foot.distance(from) >= Chalk.SHORTEST) {
        Point heading = foot.minus(from).unit();
        if (heading.dot(way) >= MOST_TURN) {
          for (Chalk.Reach reach : List.of(Chalk.Reach.THROUGH, Chalk.Reach.EDGE)) {
            Chalk.end(floor, from, heading, reach, Set.of()).ifPresent(stops::add);
          }
        }
      }
    }
    stops.addAll(FromCorner.aims(floor, from));
    return stops;
  }
}
