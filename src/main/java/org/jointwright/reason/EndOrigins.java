package org.jointwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jointwright.joint.Meeting;
import org.jointwright.joint.Side;
import org.jointwright.joint.Source;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Corners;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** What one end of a joint takes its place from. */
final class EndOrigins {
  private static final double INSIDE = Angles.INSIDE.value() + Tolerance.ANGLE.value();

  /** A corner that turns by less than this is straight, degrees: the rules' tolerance. */
  private static final double STRAIGHT = 180 - Tolerance.ANGLE.value();

  /** Joints nearer than this to one line go on from each other. */
  private static final double THROUGH = Math.cos(Math.toRadians(Angles.THROUGH.value()));

  private static final double LINED_UP = Tolerance.LINE_UP.value().inches();
  private static final double TOGETHER =
      Corners.TOGETHER.value().inches() + Tolerance.LENGTH_INCHES;
  private static final double RADIAL = Math.cos(Math.toRadians(2));
  private static final double MARK = Tolerance.MARK.value().inches() + 1e-9;
  private static final double TEN_MM = 10 / 25.4;

  private final Ground ground;
  private final Joint joint;
  private final Where where;
  private final Point end;
  private final Point onward;
  private final List<Origin> found = new ArrayList<>();

  private EndOrigins(Ground ground, Joint joint, boolean first) {
    this.ground = ground;
    this.joint = joint;
    where = first ? Where.START : Where.END;
    Edge last = first ? joint.path().edges().getFirst() : joint.path().edges().getLast();
    end = first ? joint.path().start() : joint.path().end();
    onward = first ? last.direction(0).times(-1) : last.direction(1);
  }

  static List<Origin> of(Ground ground, Joint joint, boolean first) {
    EndOrigins work = new EndOrigins(ground, joint, first);
    boolean atCorner = work.corner();
    work.features();
    work.given();
    work.neighbour();
    work.otherJoints();
    work.radial();
    if (!atCorner) {
      work.boxOutSide();
      work.mark();
    }
    return work.found;
  }

  /** The corner at the end, if one is there. */
  private boolean corner() {
    Optional<Ground.Spot> spot =
        ground.spots().stream()
            .filter(s -> s.at().distance(end) <= Ground.ON && isSome(s))
            .min(Comparator.comparingDouble(s -> s.at().distance(end)));
    if (spot.isEmpty()) {
      return betweenTwo();
    }
    Ground.Spot s = spot.get();
    double degrees = s.corner().interior();
    if (degrees > INSIDE) {
      inside(s);
    } else if (isArcEnd(s)) {
      Side arc = s.after().edge() instanceof Arc ? s.after() : s.before();
      found.add(new Origin.EndOfArc(where, arc.source(), s.at(), ground.letter(s.at())));
    } else {
      Source of = edgeLeaving(s);
      found.add(new Origin.OutsideCorner(where, of, s.at(), ground.letter(s.at()), degrees));
    }
    return true;
  }

  private static boolean isSome(Ground.Spot s) {
    double degrees = s.corner().interior();
    return degrees > INSIDE || degrees < STRAIGHT || isArcEnd(s);
  }

  /** Whether one arc ends there, rather than going on as another piece of the same circle. */
  private static boolean isArcEnd(Ground.Spot s) {
    if (s.before().edge() instanceof Arc a && s.after().edge() instanceof Arc b) {
      return a.centre().distance(b.centre()) > 1 || Math.abs(a.radius() - b.radius()) > 1;
    }
    return s.before().edge() instanceof Arc || s.after().edge() instanceof Arc;
  }

  private void inside(Ground.Spot s) {
    for (Side side : List.of(s.after(), s.before())) {
      if (side.source() instanceof Source.OnBoxOut b) {
        found.add(new Origin.BoxOutCorner(where, b.fixed(), s.at()));
        return;
      }
    }
    found.add(
        new Origin.InsideCorner(
            where, edgeLeaving(s), s.at(), ground.letter(s.at()), s.corner().interior()));
  }

  /** The edge that leaves the corner on a walk counter-clockwise round its own ring. */
  private static Source edgeLeaving(Ground.Spot s) {
    boolean hole = s.before().source() instanceof Source.OnOpening;
    return hole ? s.before().source() : s.after().source();
  }

  /** A joint between two inside corners near each other serves both. */
  private boolean betweenTwo() {
    for (Side side : ground.sidesAt(end)) {
      List<Ground.Spot> ends =
          ground.spots().stream()
              .filter(s -> s.corner().interior() > INSIDE)
              .filter(s -> s.after().equals(side) || s.before().equals(side))
              .toList();
      if (ends.size() == 2 && ends.getFirst().at().distance(ends.getLast().at()) <= TOGETHER) {
        ends.forEach(this::inside);
        return true;
      }
    }
    return false;
  }

  private void features() {
    Slab slab = ground.slab();
    List<Edge> outline = slab.outline().ring().edges();
    for (int i = 0; i < outline.size(); i++) {
      features(outline.get(i), slab.edge(i), new Source.OnOutline(i));
    }
    for (int n = 0; n < slab.openings().size(); n++) {
      Opening o = slab.openings().get(n);
      List<Edge> edges = o.outline().ring().edges();
      for (int i = 0; i < edges.size(); i++) {
        features(edges.get(i), o.edge(i), new Source.OnOpening(n, i));
      }
    }
  }

  private void features(Edge edge, EdgeSetting setting, Source of) {
    for (int i = 0; i < setting.features().size(); i++) {
      Feature f = setting.features().get(i);
      for (boolean first : new boolean[] {true, false}) {
        double at = (first ? f.from() : f.to()) / edge.length();
        if (at <= 1 && edge.at(at).distance(end) <= LINED_UP) {
          found.add(new Origin.FeatureEnd(where, of, f.kind(), i, first));
        }
      }
    }
  }

  private void given() {
    for (int i = 0; i < ground.plan().given().size(); i++) {
      Path path = ground.plan().given().get(i).path();
      if (Math.min(path.start().distance(end), path.end().distance(end)) <= LINED_UP) {
        found.add(new Origin.GivenJointEnd(where, i));
      }
    }
  }

  private void neighbour() {
    for (Meeting m : ground.meetings()) {
      String own = ground.slab().id();
      boolean ours = m.first().equals(own) || m.second().equals(own);
      if (!ours || m.stretch().distance(end) > Ground.ON || m.needsIsolation(ground.plan())) {
        continue;
      }
      String other = m.first().equals(own) ? m.second() : m.first();
      ground.plan().slab(other).ifPresent(this::meets);
    }
  }

  private void meets(Slab other) {
    for (Joint j : other.joints()) {
      boolean met =
          j.kind() != JointKind.ISOLATION
              && !isAlongEdge(other, j)
              && Math.min(j.path().start().distance(end), j.path().end().distance(end))
                  <= LINED_UP + 1e-6;
      Origin origin = new Origin.NeighbourJoint(where, other.id(), j.id());
      if (met && !found.contains(origin)) {
        found.add(origin);
      }
    }
  }

  private static boolean isAlongEdge(Slab slab, Joint j) {
    return slab.outline().ring().distance(j.path().edges().getFirst().at(0.5)) <= Ground.ON;
  }

  /** The joints that go on from an end of a joint in the same line, or nearly. */
  static List<String> goingOn(Ground ground, Joint joint, boolean first) {
    EndOrigins work = new EndOrigins(ground, joint, first);
    return ground.joints().stream().filter(work::goesOn).map(Joint::id).toList();
  }

  private boolean goesOn(Joint j) {
    return bend(j).isPresent();
  }

  /** By how much a joint that goes on turns from this one, degrees; empty where none goes on. */
  private OptionalDouble bend(Joint j) {
    Edge a = j.path().edges().getFirst();
    Edge b = j.path().edges().getLast();
    if (j.id().equals(joint.id())) {
      return OptionalDouble.empty();
    }
    return Stream.of(
            a.start().distance(end) <= LINED_UP ? a.direction(0).dot(onward) : -1,
            b.end().distance(end) <= LINED_UP ? -b.direction(1).dot(onward) : -1)
        .filter(cosine -> cosine > THROUGH)
        .mapToDouble(cosine -> Math.toDegrees(Math.acos(Math.min(1, cosine))))
        .min();
  }

  private void otherJoints() {
    List<Joint> onward = ground.joints().stream().filter(this::goesOn).toList();
    onward.forEach(j -> found.add(new Origin.GoesOn(where, j.id(), bend(j).orElse(0))));
    if (onward.isEmpty() && !ground.isOnEdge(end)) {
      ground.joints().stream()
          .filter(j -> !j.id().equals(joint.id()) && j.path().distance(end) <= Ground.ON)
          .min(
              Comparator.comparingDouble((Joint j) -> j.path().distance(end))
                  .thenComparing(Joint::id))
          .ifPresent(j -> found.add(new Origin.EndsOn(where, j.id())));
    }
  }

  private void radial() {
    ground.sidesAt(end).stream()
        .filter(side -> side.edge() instanceof Arc a && isRadial(a))
        .min(
            // An end where two arcs of one circle meet is on both: the lower one has it.
            Comparator.comparingLong((Side side) -> Math.round(64 * side.edge().distance(end)))
                .thenComparingDouble(side -> side.edge().at(0.5).y())
                .thenComparingDouble(side -> side.edge().at(0.5).x()))
        .ifPresent(
            side -> {
              if (side.edge() instanceof Arc a) {
                found.add(new Origin.Radial(where, side.source(), a.centre()));
              }
            });
  }

  private boolean isRadial(Arc a) {
    return joint.path().edges().size() == 1
        && Math.abs(end.minus(a.centre()).unit().dot(onward)) > RADIAL;
  }

  private void boxOutSide() {
    for (Side side : ground.sidesAt(end)) {
      if (side.source() instanceof Source.OnBoxOut b) {
        found.add(new Origin.BoxOutSide(where, b.fixed()));
        return;
      }
    }
  }

  private void mark() {
    double step = ground.plan().unit().isMetric() ? TEN_MM : 1;
    for (Tape t : ground.lettering().tapesAt(end, Ground.ON)) {
      double at = t.distanceTo(end);
      if (isWhole(at, step)) {
        found.add(new Origin.WholeMark(where, t.from().letter(), t.name(), whole(at, step)));
        return;
      }
      if (isWhole(t.length() - at, step)) {
        double mark = whole(t.length() - at, step);
        found.add(new Origin.WholeMark(where, t.to().letter(), t.name(), mark));
        return;
      }
    }
  }

  private static boolean isWhole(double inches, double step) {
    return Math.abs(inches - whole(inches, step)) <= MARK;
  }

  private static double whole(double inches, double step) {
    return step * Math.rint(inches / step);
  }
}
