package org.jointwright.fix;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jointwright.fix.line.Chalk;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Stop;
import org.jointwright.fix.name.Target;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Runs a joint that ends on another on through it, until it makes no tee. */
final class RunOn implements Remedy {
  @Override
  public List<Fix> proposals(Broken broken) {
    Point at = broken.finding().at();
    Floor floor = broken.floor();
    Set<Joint> joints = new LinkedHashSet<>();
    broken.joint().ifPresent(joints::add);
    for (Floor.Line l : floor.at(at)) {
      if (l.source() instanceof Source.OnJoint j) {
        floor.joint(j.joint()).ifPresent(joints::add);
      }
    }
    List<Fix> fixes = new ArrayList<>();
    for (Joint j : joints) {
      Edge edge = j.path().edges().getFirst();
      if (j.path().edges().size() == 1 && edge instanceof Segment s) {
        Segment way = s.end().distance(at) <= s.start().distance(at) ? s : s.reversed();
        if (way.end().distance(at) <= 2) {
          for (Chalk.Reach reach : List.of(Chalk.Reach.THROUGH, Chalk.Reach.EDGE)) {
            Chalk.end(floor, way.end(), way.direction(1), reach, Set.of(j.id()))
                .filter(stop -> stop.at().distance(way.end()) >= Chalk.SHORTEST)
                .ifPresent(stop -> fixes.add(fix(broken, j, way.start(), stop)));
          }
        }
      }
    }
    return fixes;
  }

  private static Fix fix(Broken broken, Joint joint, Point from, Stop to) {
    Joint longer = joint.withPath(Path.straight(from, to.at())).withLocked(true);
    Target target = broken.target(to);
    return Fix.of(
        "fix.runThrough",
        "fix.did.runOn",
        List.of(broken.name(joint), target.name(), target.kind()),
        broken.redraft().with(longer).edit());
  }
}
