package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.fix.line.Chalk;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Stop;
import org.jointwright.fix.name.Target;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.shape.Traced;

/** Runs the end of a joint on to what it nearly meets, or cuts it back to what it passed. */
final class Ends implements Remedy {
  @Override
  public List<Fix> proposals(Broken broken) {
    return broken.joint().map(j -> proposals(broken, j)).orElse(List.of());
  }

  private static List<Fix> proposals(Broken broken, Joint joint) {
    List<Fix> fixes = new ArrayList<>();
    Path path = Traced.path(joint.path());
    if (path.edges().size() == 1) {
      Edge edge = path.edges().getFirst();
      boolean startIsNearer =
          edge.start().distance(broken.finding().at()) < edge.end().distance(broken.finding().at());
      List<Edge> ways =
          startIsNearer ? List.of(edge.reversed(), edge) : List.of(edge, edge.reversed());
      for (Edge way : ways) {
        runOn(broken, joint, way, fixes);
      }
      for (Edge way : ways) {
        cutBack(broken, joint, way, fixes);
      }
      cutBoth(broken, joint, edge, fixes);
      goOnBehind(broken, joint, edge, fixes);
    } else {
      straighten(broken, joint, path, fixes);
    }
    return fixes;
  }

  private static void runOn(Broken broken, Joint joint, Edge way, List<Fix> fixes) {
    Floor floor = broken.floor();
    switch (way) {
      case Segment s -> {
        for (Chalk.Reach reach : List.of(Chalk.Reach.NEXT, Chalk.Reach.THROUGH)) {
          Chalk.end(floor, s.end(), s.direction(1), reach, Set.of(joint.id()))
              .ifPresent(
                  stop ->
                      fixes.add(
                          said(broken, joint, Path.straight(s.start(), stop.at()), stop, true)));
        }
      }
      case Arc a -> {
        double room = 2 * Math.PI - Math.abs(a.sweep()) - 0.01;
        double sweep = Math.copySign(Math.min(Math.PI / 2, room), a.sweep());
        if (room > 0.1) {
          Arc on = arc(a.end(), a.centre(), sweep);
          meetings(floor, joint, on).stream()
              .min(Comparator.comparingDouble(m -> on.nearest(m.at())))
              .ifPresent(
                  m -> {
                    double more = on.nearest(m.at()) * sweep;
                    Path path = Path.of(new Arc(a.start(), m.at(), a.centre(), a.sweep() + more));
                    fixes.add(said(broken, joint, path, m, true));
                  });
        }
      }
    }
  }

  private static Arc arc(Point start, Point centre, double sweep) {
    return new Arc(start, centre.plus(start.minus(centre).turned(sweep)), centre, sweep);
  }

  /** Where a line meets others than the joint's own. */
  private static List<Stop> meetings(Floor floor, Joint joint, Edge edge) {
    List<Stop> meetings = new ArrayList<>();
    for (Floor.Line l : floor.lines()) {
      boolean isOwn =
          l.source() instanceof org.jointwright.joint.Source.OnJoint j
              && j.joint().equals(joint.id());
      if (!isOwn) {
        for (Crossing c : Crossing.of(edge, l.edge())) {
          double from = c.first() * edge.length();
          if (from > 1 && edge.length() - from > 1.0 / 16) {
            meetings.add(new Stop(l.edge().at(c.second()), l.source(), l.isRim(), true));
          }
        }
      }
    }
    return meetings;
  }

  /**
   * Back to the last line that it crossed; not to the far side of a hole, which it would still
   * cross.
   */
  private static void cutBack(Broken broken, Joint joint, Edge way, List<Fix> fixes) {
    meetings(broken.floor(), joint, way).stream()
        .filter(m -> broken.floor().holds(way.at(way.nearest(m.at()) - 1 / way.length())))
        .sorted(Comparator.comparingDouble((Stop m) -> -way.nearest(m.at())))
        .limit(2)
        .forEach(
            m -> {
              double t = way.nearest(m.at());
              if (t * way.length() > Chalk.SHORTEST) {
                Path path =
                    way instanceof Arc a
                        ? Path.of(new Arc(a.start(), m.at(), a.centre(), a.sweep() * t))
                        : Path.straight(way.start(), m.at());
                fixes.add(said(broken, joint, path, m, false));
              }
            });
  }

  /** To the stretch between the edges that it passed at both ends. */
  private static void cutBoth(Broken broken, Joint joint, Edge edge, List<Fix> fixes) {
    if (edge instanceof Segment s) {
      Point middle = s.at(0.5);
      Optional<Path> path = Chalk.through(broken.floor(), middle, s.direction(0), Chalk.Reach.EDGE);
      Optional<Stop> end =
          Chalk.end(broken.floor(), middle, s.direction(0), Chalk.Reach.EDGE, Set.of());
      if (path.isPresent() && end.isPresent() && path.get().length() < s.length()) {
        fixes.add(said(broken, joint, path.get(), end.get(), false));
      }
    }
  }

  /** From edge to edge on both sides of a hole that it ran through. */
  private static void goOnBehind(Broken broken, Joint joint, Edge edge, List<Fix> fixes) {
    if (!(edge instanceof Segment whole)) {
      return;
    }
    List<Stop> stops =
        meetings(broken.floor(), joint, whole).stream()
            .filter(Stop::wall)
            .sorted(Comparator.comparingDouble(m -> whole.nearest(m.at())))
            .toList();
    List<Point> cuts = new ArrayList<>(List.of(whole.start()));
    stops.forEach(m -> cuts.add(m.at()));
    cuts.add(whole.end());
    List<Path> pieces = new ArrayList<>();
    for (int i = 1; i < cuts.size(); i++) {
      Point from = cuts.get(i - 1);
      Point to = cuts.get(i);
      if (from.distance(to) > Chalk.SHORTEST && broken.floor().holds(from.towards(to, 0.5))) {
        pieces.add(Path.straight(from, to));
      }
    }
    if (pieces.size() < 2) {
      return;
    }
    var redraft = broken.redraft().with(joint.withPath(pieces.getFirst()).withLocked(true));
    for (Path p : pieces.subList(1, pieces.size())) {
      redraft = redraft.adding(joint.kind(), p, joint.purpose());
    }
    Target target = broken.target(stops.getFirst());
    fixes.add(
        Fix.of(
            "fix.goOnBehind",
            "fix.did.cutBack",
            List.of(broken.name(joint), target.name(), target.kind()),
            redraft.edit()));
  }

  private static void straighten(Broken broken, Joint joint, Path path, List<Fix> fixes) {
    if (path.isClosed()) {
      return;
    }
    Path straight = Path.straight(path.start(), path.end());
    fixes.add(
        Fix.of(
            "fix.straighten",
            "fix.did.straighten",
            List.of(broken.name(joint)),
            broken.redraft().with(joint.withPath(straight).withLocked(true)).edit()));
    var redraft = broken.redraft().without(Set.of(joint.id()));
    for (Edge e : path.edges()) {
      redraft = redraft.adding(joint.kind(), Path.of(e), joint.purpose());
    }
    fixes.add(
        Fix.of(
            "fix.pieces",
            "fix.did.pieces",
            List.of(broken.name(joint), path.edges().size()),
            redraft.edit()));
  }

  private static Fix said(Broken broken, Joint joint, Path path, Stop end, boolean on) {
    Target target = broken.target(end);
    return Fix.of(
        on ? "fix.runOn" : "fix.cutBack",
        on ? "fix.did.runOn" : "fix.did.cutBack",
        List.of(broken.name(joint), target.name(), target.kind()),
        broken.redraft().with(joint.withPath(path).withLocked(true)).edit());
  }
}
