package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Where a joint drawn by hand runs: from line to line. An end that stands on no edge and no joint
 * runs on to the next one; one that goes beyond the concrete is cut off at its edge.
 */
public final class JointRun {
  /** A joint shorter than this is none, inches. */
  private static final double SHORTEST = 6;

  /** An end this near to a line stands on it, inches. */
  private static final double ON = 0.5;

  /** How many places of a path are looked at for one well inside. */
  private static final int SAMPLES = 24;

  private final Slab slab;
  private final Point from;
  private final Point way;
  private final Segment line;

  private JointRun(Slab slab, Point from, Point way) {
    this.slab = slab;
    this.from = from;
    this.way = way;
    double far = slab.outline().ring().perimeter();
    line = new Segment(from.minus(way.times(far)), from.plus(way.times(far)));
  }

  /** A joint, and the slab that it is in. */
  record Found(String slab, Path path) {}

  /** The joint through two points, in the slab in which the middle between them lies. */
  static Optional<Found> between(Plan plan, Point one, Point other) {
    if (one.distance(other) < ON) {
      return Optional.empty();
    }
    Point middle = one.towards(other, 0.5);
    return plan.slabs().stream()
        .filter(s -> s.region().contains(middle))
        .findFirst()
        .flatMap(
            s -> {
              double half = one.distance(other) / 2;
              Point way = other.minus(one).unit();
              Optional<Point> end = new JointRun(s, middle, way).end(half);
              Optional<Point> start = new JointRun(s, middle, way.times(-1)).end(half);
              return start
                  .flatMap(a -> end.flatMap(b -> path(a, b)))
                  .map(p -> new Found(s.id(), p));
            });
  }

  /** A joint from a fixed end to where the hand leads the other; empty where there is none. */
  public static Optional<Path> from(Plan plan, String slab, Point fixed, Point to) {
    Slab in = plan.slab(slab).orElseThrow();
    if (fixed.distance(to) < SHORTEST) {
      return Optional.empty();
    }
    Point way = to.minus(fixed).unit();
    return in.region().contains(fixed.plus(way.times(2 * ON)))
        ? new JointRun(in, fixed, way).end(fixed.distance(to)).flatMap(b -> path(fixed, b))
        : Optional.empty();
  }

  /** As much of a straight path as runs through the concrete, not along an edge of it. */
  public static Optional<Path> within(Plan plan, String slab, Path path) {
    Slab in = plan.slab(slab).orElseThrow();
    Point best = path.start();
    double clear = ON;
    for (int i = 1; i < SAMPLES; i++) {
      Point p = path.start().towards(path.end(), (double) i / SAMPLES);
      double d = rims(in).mapToDouble(e -> e.distance(p)).min().orElse(0);
      if (d > clear && in.region().contains(p)) {
        clear = d;
        best = p;
      }
    }
    if (best.equals(path.start())) {
      return Optional.empty();
    }
    Point way = path.end().minus(path.start()).unit();
    Point from = new JointRun(in, best, way.times(-1)).until(best.distance(path.start()));
    return path(from, new JointRun(in, best, way).until(best.distance(path.end())));
  }

  /** So far along the way, or to the edge of the concrete. */
  private Point until(double wanted) {
    double rim =
        rims()
            .flatMapToDouble(e -> meetings(e).stream().mapToDouble(d -> d))
            .filter(d -> d > 0)
            .min()
            .orElse(wanted);
    return at(Math.min(wanted, rim));
  }

  private static Optional<Path> path(Point a, Point b) {
    return a.distance(b) < SHORTEST ? Optional.empty() : Optional.of(Path.straight(a, b));
  }

  /** Where the joint ends whose hand is so far along the way. */
  private Optional<Point> end(double wanted) {
    OptionalDouble rim =
        rims()
            .flatMapToDouble(e -> meetings(e).stream().mapToDouble(d -> d))
            .filter(d -> d > ON)
            .min();
    if (rim.isEmpty()) {
      return Optional.empty();
    }
    if (wanted >= rim.getAsDouble() - ON) {
      return Optional.of(at(rim.getAsDouble()));
    }
    OptionalDouble joint =
        slab.joints().stream()
            .filter(j -> j.kind() != JointKind.ISOLATION)
            .map(Joint::path)
            .flatMap(p -> p.edges().stream())
            .flatMapToDouble(e -> meetings(e).stream().mapToDouble(d -> d))
            .filter(d -> d >= wanted - ON && d < rim.getAsDouble() && d > ON)
            .min();
    return Optional.of(at(joint.orElse(rim.getAsDouble())));
  }

  private Point at(double far) {
    return from.plus(way.times(far));
  }

  /** How far along the way an edge is met, each time. */
  private List<Double> meetings(Edge e) {
    List<Double> far = new ArrayList<>();
    for (Crossing c : Crossing.of(line, e)) {
      far.add(e.at(c.second()).minus(from).dot(way));
    }
    return far;
  }

  private Stream<Edge> rims() {
    return rims(slab);
  }

  /** What bounds the concrete of a slab: outline, openings, box-outs. */
  static Stream<Edge> rims(Slab slab) {
    Stream<Edge> openings =
        slab.openings().stream().map(Opening::outline).flatMap(o -> o.ring().edges().stream());
    Stream<Edge> boxOuts =
        slab.boxOuts().stream().map(BoxOut::outline).flatMap(o -> o.ring().edges().stream());
    return Stream.of(slab.outline().ring().edges().stream(), openings, boxOuts).flatMap(s -> s);
  }
}
