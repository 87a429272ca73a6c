package org.jointwright.fix.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.shape.Traced;

/**
 * Puts a line of joints elsewhere: its ends run along what they stand on, and joints that end on it
 * are run on or cut back to it.
 */
public final class Relaid {
  /** How much farther than the line itself an end may have to go, inches. */
  private static final double FARTHER = 120;

  private final Floor floor;
  private final Straight line;
  private final Set<String> own;
  private final Segment carrier;

  private Relaid(Floor floor, Straight line, Point through, Point heading) {
    this.floor = floor;
    this.line = line;
    own = line.ids();
    Point far = heading.unit().times(floor.far() * 2);
    carrier = new Segment(through.minus(far), through.plus(far));
  }

  /**
   * The joints that change when a line is laid through another place with another heading; empty
   * where it has no place there. Those of the line itself are locked then.
   */
  public static Optional<List<Joint>> onto(
      Floor floor, Straight line, Point through, Point heading) {
    return new Relaid(floor, line, through, heading).joints();
  }

  /** The joints that change when a line is shifted to its left, inches. */
  public static Optional<List<Joint>> shifted(Floor floor, Straight line, double by) {
    return onto(floor, line, line.at().plus(line.heading().left().times(by)), line.heading());
  }

  private Optional<List<Joint>> joints() {
    List<Joint> changed = new ArrayList<>();
    for (Joint j : line.joints()) {
      Optional<Path> path = moved(j);
      if (path.isEmpty()) {
        return Optional.empty();
      }
      changed.add(j.withPath(path.get()).withLocked(true));
    }
    for (Joint j : floor.slab().joints()) {
      if (!own.contains(j.id())) {
        Path path = j.path();
        boolean start = endsOnLine(path.start());
        boolean end = endsOnLine(path.end());
        if (start || end) {
          Optional<Path> drawn = Optional.of(Traced.path(path)).filter(p -> p.edges().size() == 1);
          if (start) {
            drawn = drawn.flatMap(p -> drawn(reversed(p))).map(Relaid::reversed);
          }
          if (end) {
            drawn = drawn.flatMap(this::drawn);
          }
          if (drawn.isEmpty()) {
            return Optional.empty();
          }
          changed.add(j.withPath(drawn.get()));
        }
      }
    }
    return Optional.of(changed);
  }

  private static Path reversed(Path p) {
    return Path.of(p.edges().getFirst().reversed());
  }

  private Optional<Path> moved(Joint j) {
    Point start = j.path().start();
    Point end = j.path().end();
    Optional<Point> from = slid(start);
    Optional<Point> to = slid(end);
    return from.isPresent()
            && to.isPresent()
            && to.get().minus(from.get()).dot(end.minus(start).unit()) >= Chalk.SHORTEST
        ? Optional.of(Path.straight(from.get(), to.get()))
        : Optional.empty();
  }

  /** Where an end of the line comes to stand. */
  private Optional<Point> slid(Point end) {
    Point foot = carrier.at(carrier.nearest(end));
    List<Floor.Line> under = floor.at(end).stream().filter(l -> !isOwn(l)).toList();
    if (under.isEmpty()) {
      return Optional.of(foot).filter(floor::holds);
    }
    boolean onRim = under.stream().anyMatch(Floor.Line::isRim);
    Stream<Point> places =
        onRim
            ? floor.rims().stream().flatMap(l -> crossings(l.edge()))
            : under.stream().flatMap(l -> crossings(longer(l.edge())));
    return places.min(Comparator.comparingDouble(p -> p.distance(foot)));
  }

  private boolean isOwn(Floor.Line l) {
    return l.source() instanceof Source.OnJoint j && own.contains(j.joint());
  }

  private Stream<Point> crossings(Edge edge) {
    return Crossing.of(carrier, edge).stream().map(c -> edge.at(c.second()));
  }

  /** A straight joint that goes on, for a piece that ends on the line and runs on beyond it. */
  private static Edge longer(Edge edge) {
    return switch (edge) {
      case Segment s -> {
        Point on = s.direction(0).times(FARTHER);
        yield new Segment(s.start().minus(on), s.end().plus(on));
      }
      case Arc a -> a;
    };
  }

  /** Whether an end that is no line's own stands on the line and on nothing else that stays. */
  private boolean endsOnLine(Point end) {
    if (floor.isOnRim(end)
        || line.joints().stream().noneMatch(j -> j.path().distance(end) <= Floor.ON)) {
      return false;
    }
    return floor.at(end).stream()
        .filter(l -> !isOwn(l))
        .noneMatch(
            l ->
                l.edge().start().distance(end) > Floor.MEET
                    && l.edge().end().distance(end) > Floor.MEET);
  }

  /** A path of one edge whose end is drawn to the line. */
  private Optional<Path> drawn(Path path) {
    Edge edge = path.edges().getFirst();
    Point end = edge.end();
    return switch (edge) {
      case Segment s ->
          crossings(longer(s))
              .filter(p -> p.minus(s.start()).dot(s.direction(0)) >= Chalk.SHORTEST)
              .min(Comparator.comparingDouble(p -> p.distance(end)))
              .map(p -> Path.straight(s.start(), p));
      case Arc a ->
          Stream.of(a, goingOn(a))
              .flatMap(this::crossings)
              .min(Comparator.comparingDouble(p -> p.distance(end)))
              .map(p -> upTo(a, p));
    };
  }

  private static Arc goingOn(Arc a) {
    double sweep = Math.copySign(Math.min(1, 2 * Math.PI - Math.abs(a.sweep()) - 0.01), a.sweep());
    return new Arc(
        a.end(), a.centre().plus(a.end().minus(a.centre()).turned(sweep)), a.centre(), sweep);
  }

  private static Path upTo(Arc a, Point end) {
    Point u = a.start().minus(a.centre());
    Point v = end.minus(a.centre());
    double turn = Math.atan2(u.cross(v), u.dot(v));
    if (turn * a.sweep() < 0) {
      turn += Math.copySign(2 * Math.PI, a.sweep());
    }
    return Path.of(new Arc(a.start(), end, a.centre(), turn));
  }
}
