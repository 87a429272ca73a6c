package org.jointwright.joint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jointwright.joint.Source.OnBoxOut;
import org.jointwright.joint.Source.OnJoint;
import org.jointwright.joint.Source.OnOpening;
import org.jointwright.joint.Source.OnOutline;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.shape.Traced;

/**
 * The lines of a slab: its edges, its box-outs and its joints, joint ends drawn to what they reach.
 */
final class Lines {
  /**
   * How far a joint's end may stand from the line it is meant to reach, inches: the rules'
   * tolerance on lengths, and 1/16 for an arc that another program wrote as chords.
   */
  static final double REACH = 0.5 + 1.0 / 16;

  private static final double[] SAMPLES = {0, 0.25, 0.5, 0.75, 1};

  private Lines() {}

  static List<Line> of(Slab slab, List<Cutout> cutouts) {
    List<Line> lines = new ArrayList<>();
    addRing(lines, slab.outline().ring(), OnOutline::new);
    for (int n = 0; n < slab.openings().size(); n++) {
      int opening = n;
      Ring ring = slab.openings().get(n).outline().ring().counterClockwise();
      addRing(lines, ring, i -> new OnOpening(opening, i));
    }
    int ground = lines.size();
    Set<Ring> done = new HashSet<>();
    for (Cutout c : cutouts) {
      // Objects that stand close together may share one box-out.
      if (done.add(c.ring())) {
        addRing(lines, c.ring(), i -> new OnBoxOut(c.fixed(), i));
      }
    }
    lines = reaching(withoutDoubles(lines, ground), ground);
    int edges = lines.size();
    for (Joint j : slab.joints()) {
      for (Edge e : Traced.path(j.path()).edges()) {
        if (e.length() > 0 && !(j.kind() != JointKind.CONTRACTION && along(lines, edges, e))) {
          lines.add(new Line(e, new OnJoint(j.id()), lines.size()));
        }
      }
    }
    return reaching(lines, edges);
  }

  /** Box-outs at the slab's edge without their sides along it. */
  private static List<Line> withoutDoubles(List<Line> lines, int ground) {
    List<Line> kept = new ArrayList<>(lines.subList(0, ground));
    for (Line line : lines.subList(ground, lines.size())) {
      if (!along(lines, ground, line.edge())) {
        kept.add(new Line(line.edge(), line.source(), kept.size()));
      }
    }
    return kept;
  }

  /** Whether an edge lies on the first lines all along, as filler on an edge does. */
  private static boolean along(List<Line> lines, int first, Edge edge) {
    for (double t : SAMPLES) {
      Point p = edge.at(t);
      boolean near = false;
      for (int i = 0; i < first && !near; i++) {
        near = lines.get(i).edge().distance(p) <= REACH;
      }
      if (!near) {
        return false;
      }
    }
    return true;
  }

  private static void addRing(
      List<Line> lines, Ring ring, java.util.function.IntFunction<Source> source) {
    for (int i = 0; i < ring.edges().size(); i++) {
      lines.add(new Line(ring.edges().get(i), source.apply(i), lines.size()));
    }
  }

  /** The lines with every joint end that nearly reaches a line moved onto it. */
  private static List<Line> reaching(List<Line> lines, int firstJoint) {
    Targets fixed = new Targets(lines.subList(0, firstJoint));
    Targets joints = new Targets(lines.subList(firstJoint, lines.size()));
    for (int i = 0; i < joints.size(); i++) {
      joints.set(i, drawnTo(fixed, joints.get(i), p -> true));
    }
    // One after the other on what was moved before: two ends must not change places.
    for (int i = 0; i < joints.size(); i++) {
      joints.set(i, drawnTo(joints, joints.get(i), p -> !fixed.hold(p)));
    }
    List<Line> moved = new ArrayList<>(lines.subList(0, firstJoint));
    moved.addAll(joints.lines());
    return moved;
  }

  private static Line drawnTo(Targets targets, Line line, Predicate<Point> which) {
    Point start = line.edge().start();
    Point end = line.edge().end();
    return line.on(
        between(
            line.edge(),
            which.test(start) ? targets.nearest(line, start) : start,
            which.test(end) ? targets.nearest(line, end) : end));
  }

  private static Edge between(Edge edge, Point start, Point end) {
    if (start.equals(end) || (start.equals(edge.start()) && end.equals(edge.end()))) {
      return edge;
    }
    return switch (edge) {
      case Segment s -> new Segment(start, end);
      case Arc a -> Arc.through(start, a.middle(), end);
    };
  }
}
