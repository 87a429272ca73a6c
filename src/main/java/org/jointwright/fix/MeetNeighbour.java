package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.fix.line.Chalk;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Relaid;
import org.jointwright.fix.line.Straight;
import org.jointwright.fix.name.JointName;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Brings joints of two slabs together at the edge that they share: moves the one or the other, or
 * runs a joint on into the neighbour.
 */
final class MeetNeighbour implements Remedy {
  /** Joints farther off than this are not the ones that were missed, inches. */
  private static final double FARTHEST = 120;

  /** No more joints of the neighbour than this are aimed at. */
  private static final int MOST = 3;

  private record Other(Slab slab, Joint joint, Point end) {}

  @Override
  public List<Fix> proposals(Broken broken) {
    Optional<Joint> joint = broken.joint();
    if (joint.isEmpty()) {
      return List.of();
    }
    List<Fix> fixes = new ArrayList<>();
    Optional<Straight> line = Straight.of(broken.floor(), joint.get());
    for (Other other : others(broken)) {
      line.flatMap(l -> own(broken, l, other)).ifPresent(fixes::add);
      theirs(broken, other).ifPresent(fixes::add);
    }
    line.ifPresent(l -> on(broken, l, fixes));
    return fixes;
  }

  /** Joints of other slabs that end on this one's outline, nearest first. */
  private static List<Other> others(Broken broken) {
    Ring outline = broken.slab().outline().ring();
    Point at = broken.finding().at();
    return broken.plan().slabs().stream()
        .filter(s -> !s.id().equals(broken.slab().id()))
        .flatMap(
            s ->
                s.joints().stream()
                    .filter(Straight::isStraight)
                    .flatMap(
                        j ->
                            Stream.of(j.path().start(), j.path().end())
                                .map(p -> new Other(s, j, p))))
        .filter(o -> outline.distance(o.end()) <= Floor.ON && o.end().distance(at) <= FARTHEST)
        .sorted(Comparator.comparingDouble(o -> o.end().distance(at)))
        .limit(MOST)
        .toList();
  }

  private static Optional<Fix> own(Broken broken, Straight line, Other other) {
    return line.isLocked()
        ? Optional.empty()
        : Relaid.onto(broken.floor(), line, other.end(), line.heading())
            .map(
                changed ->
                    Fix.of(
                        "fix.meet.own",
                        "fix.did.move",
                        List.of(
                            broken.name(line.joints().getFirst()),
                            Length.inches(Math.abs(line.off(other.end()))),
                            new JointName(other.slab().id(), other.joint().id()),
                            other.slab().id()),
                        broken.redraft().with(changed).edit()));
  }

  private static Optional<Fix> theirs(Broken broken, Other other) {
    Broken there = broken.from(other.slab().id());
    Point at = broken.finding().at();
    return Straight.of(there.floor(), other.joint())
        .filter(l -> !l.isLocked())
        .flatMap(
            l ->
                Relaid.onto(there.floor(), l, at, l.heading())
                    .map(
                        changed ->
                            Fix.of(
                                "fix.meet.theirs",
                                "fix.did.move",
                                List.of(
                                    there.name(other.joint()),
                                    Length.inches(Math.abs(l.off(at))),
                                    other.slab().id()),
                                there.redraft().with(changed).edit())));
  }

  /** The joint gone on with beyond the edge. */
  private static void on(Broken broken, Straight line, List<Fix> fixes) {
    Point at = broken.finding().at();
    Point away = at.minus(line.at());
    Point heading = line.heading().dot(away) < 0 ? line.heading().times(-1) : line.heading();
    for (Slab s : broken.plan().slabs()) {
      if (!s.id().equals(broken.slab().id()) && s.outline().ring().distance(at) <= Floor.ON) {
        Broken there = broken.from(s.id());
        for (Chalk.Reach reach : List.of(Chalk.Reach.THROUGH, Chalk.Reach.NEXT)) {
          Optional<Path> path = Chalk.from(there.floor(), at, heading, reach);
          path.ifPresent(
              p ->
                  fixes.add(
                      Fix.of(
                          "fix.meet.on",
                          "fix.did.meet",
                          List.of(broken.name(line.joints().getFirst()), s.id()),
                          there
                              .redraft()
                              .adding(JointKind.CONTRACTION, p, Purpose.SPACING)
                              .edit())));
        }
      }
    }
  }
}
