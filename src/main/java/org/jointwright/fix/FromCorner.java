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
import org.jointwright.joint.PanelMeasures;
import org.jointwright.joint.Source;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.practice.Angles;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Corner;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * A joint from an inside corner: straight on from either side of it, square to either, half way
 * between them, or to where other joints meet; on to the next line, or until it makes no tee.
 */
final class FromCorner implements Remedy {
  /** Ends of joints farther than this are not aimed at, inches. */
  private static final double AIM = 240;

  private static final double INSIDE = Angles.INSIDE.value();

  /** No more ends than this are aimed at. */
  private static final int MOST_AIMS = 8;

  @Override
  public List<Fix> proposals(Broken broken) {
    Map<Path, Fix> fixes = new LinkedHashMap<>();
    corners(broken).forEach(corner -> from(broken, corner, fixes));
    return List.copyOf(fixes.values());
  }

  /** The corner that is found, or the inside corners of the panel that is. */
  private static List<Point> corners(Broken broken) {
    if (broken.finding().rule().equals("M3")) {
      return List.of(broken.finding().at());
    }
    return broken.panel().stream()
        .flatMap(p -> PanelMeasures.of(p).corners().stream())
        .filter(c -> c.interior() > INSIDE)
        .map(Corner::at)
        .toList();
  }

  private static void from(Broken broken, Point corner, Map<Path, Fix> fixes) {
    List<Point> headings = headings(broken.floor(), corner);
    for (Chalk.Reach reach : List.of(Chalk.Reach.THROUGH, Chalk.Reach.NEXT)) {
      for (Point heading : headings) {
        Chalk.end(broken.floor(), corner, heading, reach, Set.of())
            .filter(s -> s.at().distance(corner) > Floor.ON)
            .ifPresent(s -> put(broken, corner, s, fixes));
      }
    }
    aims(broken.floor(), corner).forEach(s -> put(broken, corner, s, fixes));
  }

  private static void put(Broken broken, Point corner, Stop end, Map<Path, Fix> fixes) {
    Path path = Path.straight(corner, end.at());
    String from = broken.marks().side(corner);
    Target to = broken.target(end);
    var edit = broken.redraft().adding(JointKind.CONTRACTION, path, Purpose.INSIDE_CORNER).edit();
    boolean isLettered = broken.marks().lettering().cornerAt(corner).isPresent();
    fixes.putIfAbsent(
        path,
        from.isEmpty()
            ? Fix.of("fix.corner.here", "fix.did.corner", List.of(to.name(), to.kind()), edit)
            : Fix.of(
                isLettered ? "fix.corner.lettered" : "fix.corner.side",
                "fix.did.corner",
                List.of(to.name(), to.kind(), from),
                edit));
  }

  /** The ways in which a joint may leave a corner, the ones that go on from its sides first. */
  private static List<Point> headings(Floor floor, Point corner) {
    List<Point> on = new ArrayList<>();
    Point between = new Point(0, 0);
    for (Floor.Line line : floor.at(corner)) {
      Edge e = line.edge();
      double t = e.nearest(corner);
      Point way = e.direction(t);
      if (e.start().distance(corner) <= Floor.ON) {
        on.add(way.times(-1));
        between = between.minus(way);
      } else if (e.end().distance(corner) <= Floor.ON) {
        on.add(way);
        between = between.plus(way);
      } else {
        on.add(way.left());
        on.add(way.left().times(-1));
      }
      if (e instanceof Arc a) {
        Point spoke = corner.minus(a.centre()).unit();
        on.add(spoke);
        on.add(spoke.times(-1));
      }
    }
    List<Point> all = new ArrayList<>(on);
    if (between.norm() > 0.01) {
      all.add(between.unit());
    }
    for (Point way : on) {
      all.add(way.left());
      all.add(way.left().times(-1));
    }
    return all;
  }

  /** Ends of joints and corners of the slab that can be seen from a place, nearest first. */
  static List<Stop> aims(Floor floor, Point corner) {
    List<Stop> aims = new ArrayList<>();
    floor.lines().stream()
        .flatMap(
            l ->
                java.util.stream.Stream.of(l.edge().start(), l.edge().end())
                    .map(p -> new Stop(p, l.source(), l.isRim(), true)))
        .filter(s -> s.at().distance(corner) > Chalk.SHORTEST && s.at().distance(corner) < AIM)
        .sorted(java.util.Comparator.comparingDouble(s -> s.at().distance(corner)))
        .filter(s -> isSeen(floor, corner, s.at()))
        .forEach(
            s -> {
              if (aims.size() < MOST_AIMS
                  && aims.stream().noneMatch(a -> a.at().distance(s.at()) < Floor.ON)) {
                aims.add(s);
              }
            });
    return aims;
  }

  private static boolean isSeen(Floor floor, Point from, Point to) {
    List<Stop> stops = floor.stops(from, to.minus(from).unit(), Set.of());
    return !stops.isEmpty()
        && stops.getFirst().at().distance(from) >= to.distance(from) - Floor.ON
        && !(stops.getFirst().source() instanceof Source.OnBoxOut);
  }
}
