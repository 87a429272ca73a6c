package org.jointwright.fix.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Side;
import org.jointwright.joint.Source;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.shape.Traced;

/**
 * Leaves a piece out round a fixed object: the part of a ring that lies on the slab, with filler
 * where it borders on concrete; joints are cut back or run on to it, and one leaves each corner.
 */
public final class BoxedOut {
  private static final int SAMPLES = 6;

  private final Floor floor;
  private final FixedObject object;
  private final Ring ring;
  private Redraft redraft;

  private BoxedOut(Floor floor, FixedObject object, Ring ring) {
    this.floor = floor;
    this.object = object;
    this.ring = ring;
    redraft = Redraft.of(floor.slab());
  }

  /**
   * A slab's joints and box-outs with an object boxed out by a ring; empty where the ring leaves no
   * single piece of the slab.
   *
   * @param through whether joints from the corners run on until they make no tee
   */
  public static Optional<Redraft> round(
      Floor floor, FixedObject object, Ring ring, boolean through) {
    return new BoxedOut(floor, object, ring).done(through);
  }

  /** A square by its middle, the direction of two of its corners, and how far these are out. */
  public static Ring square(Point middle, Point towards, double half) {
    List<Point> corners = new ArrayList<>();
    Point u = towards.unit().times(half);
    for (int i = 0; i < 4; i++) {
      corners.add(middle.plus(u));
      u = u.left();
    }
    return Ring.of(corners);
  }

  /** A circle. */
  public static Ring circle(Point middle, double radius) {
    Point right = middle.plus(new Point(radius, 0));
    Point left = middle.minus(new Point(radius, 0));
    return new Ring(
        List.of(new Arc(right, left, middle, Math.PI), new Arc(left, right, middle, Math.PI)));
  }

  /** A ring larger or smaller about a point. */
  public static Ring scaled(Ring ring, Point about, double by) {
    return new Ring(ring.edges().stream().map(e -> scaled(e, about, by)).toList());
  }

  private static Edge scaled(Edge edge, Point about, double by) {
    return switch (edge) {
      case Segment s -> new Segment(scaled(s.start(), about, by), scaled(s.end(), about, by));
      case Arc a ->
          new Arc(
              scaled(a.start(), about, by),
              scaled(a.end(), about, by),
              scaled(a.centre(), about, by),
              a.sweep());
    };
  }

  private static Point scaled(Point p, Point about, double by) {
    return about.plus(p.minus(about).times(by));
  }

  private Optional<Redraft> done(boolean through) {
    Optional<Panel> piece = piece();
    if (piece.isEmpty()) {
      return Optional.empty();
    }
    List<Side> sides = piece.get().outer();
    takeOutOldFiller(piece.get().ring());
    drawJoints(piece.get().ring());
    redraft = redraft.boxingOut(new BoxOut(object.id(), outline(piece.get().ring()), Kept.NOTHING));
    fill(sides);
    leaveCorners(sides, through);
    return Optional.of(redraft);
  }

  /** The part of the ring that lies on the slab. */
  private Optional<Panel> piece() {
    Joint filler = Joint.of("F", JointKind.ISOLATION, new Path(ring.edges()), Purpose.ISOLATION);
    Slab bare = floor.slab().withLaid(List.of(filler), List.of());
    List<Panel> inside = Layouts.of(bare).panels().stream().filter(p -> isIn(p.ring())).toList();
    return inside.size() == 1 && inside.getFirst().holes().isEmpty()
        ? Optional.of(inside.getFirst())
        : Optional.empty();
  }

  private boolean isIn(Ring panel) {
    return panel.edges().stream()
        .flatMap(e -> java.util.stream.Stream.of(e.start(), e.at(0.5)))
        .allMatch(p -> ring.contains(p) || ring.distance(p) <= Floor.ON);
  }

  private static Outline outline(Ring ring) {
    return new Outline(
        ring.edges().stream()
            .map(e -> e instanceof Arc a ? Vertex.arc(a.start(), a.middle()) : Vertex.at(e.start()))
            .toList());
  }

  /** Filler that lies on the old or in the new box-out goes. */
  private void takeOutOldFiller(Ring piece) {
    List<Edge> old =
        floor.lines().stream()
            .filter(l -> l.source() instanceof Source.OnBoxOut b && b.fixed().equals(object.id()))
            .map(Floor.Line::edge)
            .toList();
    Set<String> gone = new HashSet<>();
    for (Joint j : floor.slab().joints()) {
      if (j.kind() == JointKind.ISOLATION
          && samples(j.path()).allMatch(p -> isNear(old, p) || piece.contains(p))) {
        gone.add(j.id());
      }
    }
    redraft = redraft.without(gone);
  }

  private static boolean isNear(List<Edge> edges, Point p) {
    return edges.stream().anyMatch(e -> e.distance(p) <= Floor.ON);
  }

  private static java.util.stream.Stream<Point> samples(Path path) {
    return path.edges().stream()
        .flatMap(
            e ->
                java.util.stream.IntStream.rangeClosed(0, SAMPLES)
                    .mapToObj(i -> e.at((double) i / SAMPLES)));
  }

  /** Joints that crossed the piece, or ended on the old box-out, end on the new one. */
  private void drawJoints(Ring piece) {
    for (Joint j : floor.slab().joints()) {
      Path path = Traced.path(j.path());
      if (j.kind() != JointKind.ISOLATION
          && path.edges().size() == 1
          && path.edges().getFirst() instanceof Segment s) {
        drawn(j, s, piece);
      }
    }
  }

  private void drawn(Joint joint, Segment s, Ring piece) {
    boolean from = endsHere(s.start(), piece);
    boolean to = endsHere(s.end(), piece);
    Point on = s.direction(0).times(floor.far());
    Segment line =
        new Segment(from ? s.start().minus(on) : s.start(), to ? s.end().plus(on) : s.end());
    List<Point> cuts =
        piece.edges().stream()
            .flatMap(e -> Crossing.of(line, e).stream().map(c -> e.at(c.second())))
            .sorted(Comparator.comparingDouble(line::nearest))
            .toList();
    if (cuts.isEmpty()) {
      return;
    }
    Point first = cuts.getFirst();
    Point last = cuts.getLast();
    boolean before = !from && first.distance(s.start()) > Chalk.SHORTEST;
    boolean after = !to && last.distance(s.end()) > Chalk.SHORTEST;
    if (before) {
      redraft = redraft.with(joint.withPath(Path.straight(s.start(), first)));
    }
    if (after) {
      Path rest = Path.straight(last, s.end());
      redraft =
          before
              ? redraft.adding(joint.kind(), rest, joint.purpose())
              : redraft.with(joint.withPath(rest));
    }
    if (!before && !after) {
      redraft = redraft.without(Set.of(joint.id()));
    }
  }

  private boolean endsHere(Point end, Ring piece) {
    return piece.contains(end)
        || floor.at(end).stream()
            .anyMatch(
                l -> l.source() instanceof Source.OnBoxOut b && b.fixed().equals(object.id()));
  }

  /** Filler along all sides that are not edges of the slab. */
  private void fill(List<Side> sides) {
    int n = sides.size();
    int first = 0;
    while (first < n && isFree(sides.get((first + n - 1) % n))) {
      first++;
    }
    List<Edge> run = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Side side = sides.get((first + i) % n);
      if (isFree(side)) {
        run.add(side.edge());
      } else if (!run.isEmpty()) {
        redraft = redraft.adding(JointKind.ISOLATION, new Path(run), Purpose.ISOLATION);
        run.clear();
      }
    }
    if (!run.isEmpty()) {
      redraft = redraft.adding(JointKind.ISOLATION, new Path(run), Purpose.ISOLATION);
    }
  }

  private static boolean isFree(Side side) {
    return side.source() instanceof Source.OnJoint;
  }

  /** A joint from each corner that has none, straight away from the object. */
  private void leaveCorners(List<Side> sides, boolean through) {
    Point middle = object.shape().ring().box().centre();
    Chalk.Reach reach = through ? Chalk.Reach.THROUGH : Chalk.Reach.NEXT;
    for (int i = 0; i < sides.size(); i++) {
      Side before = sides.get((i + sides.size() - 1) % sides.size());
      Side after = sides.get(i);
      Point corner = after.edge().start();
      boolean turns = Math.abs(before.edge().direction(1).cross(after.edge().direction(0))) > 0.1;
      if (isFree(before) && isFree(after) && turns && isUnmet(corner)) {
        Chalk.from(floor, corner, corner.minus(middle).unit(), reach)
            .ifPresent(p -> redraft = redraft.adding(JointKind.CONTRACTION, p, Purpose.BOX_OUT));
      }
    }
  }

  private boolean isUnmet(Point corner) {
    return redraft.joints().stream()
        .filter(j -> j.kind() != JointKind.ISOLATION)
        .allMatch(
            j ->
                j.path().start().distance(corner) > Floor.ON
                    && j.path().end().distance(corner) > Floor.ON);
  }
}
