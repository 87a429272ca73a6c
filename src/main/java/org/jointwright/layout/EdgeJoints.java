package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Meeting;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** Filler along the edges that need it (M7), and the construction joints where slabs meet. */
final class EdgeJoints {
  /** What is shorter is no joint, inches. */
  private static final double SHORTEST = 1;

  /** Edges farther apart than this do not meet, inches: the rules' tolerance on lengths. */
  private static final double NEAR = Tolerance.LENGTH_INCHES;

  /** A shorter meeting of two slabs is a touch at a corner, inches. */
  private static final double SHORTEST_MEETING = 6;

  /** Nearer to a box-out's side is on it, inches. */
  private static final double ON_RING = 0.05;

  private final List<Segment> filled = new ArrayList<>();

  private EdgeJoints() {}

  /** The plan's slabs, each with the joints along its edges. */
  static List<Slab> addTo(Plan plan) {
    EdgeJoints work = new EdgeJoints();
    List<Slab> done = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      List<Joint> added = new ArrayList<>(construction(plan, slab));
      added.addAll(work.isolation(slab));
      List<Joint> all = new ArrayList<>(slab.joints());
      all.addAll(added);
      done.add(slab.withLaid(CuttingOrder.inCuttingOrder(slab, all), slab.boxOuts()));
    }
    return done;
  }

  private static List<Joint> construction(Plan plan, Slab slab) {
    List<Joint> found = new ArrayList<>();
    for (Meeting m : Meeting.of(plan)) {
      boolean here = m.first().equals(slab.id());
      boolean locked = plan.slabs().stream().anyMatch(s -> isLocked(s, m.stretch()));
      if (here && !m.needsIsolation(plan) && !locked && m.stretch().length() >= SHORTEST_MEETING) {
        found.add(Joint.of("", JointKind.CONSTRUCTION, Path.of(m.stretch()), Purpose.SHARED_EDGE));
      }
    }
    return found;
  }

  private static boolean isLocked(Slab slab, Edge stretch) {
    return slab.lockedJoints().stream().anyMatch(j -> covers(j, stretch));
  }

  private static boolean covers(Joint joint, Edge edge) {
    return joint.path().distance(edge.at(0.5)) < 0.5
        && joint.path().distance(edge.at(0.1)) < 0.5
        && joint.path().distance(edge.at(0.9)) < 0.5;
  }

  private List<Joint> isolation(Slab slab) {
    List<Joint> found = new ArrayList<>();
    Ring outline = slab.outline().ring();
    for (int i = 0; i < outline.edges().size(); i++) {
      alongEdge(slab, outline.edges().get(i), slab.edge(i), found);
    }
    for (var opening : slab.openings()) {
      Ring ring = opening.outline().ring();
      for (int i = 0; i < ring.edges().size(); i++) {
        alongEdge(slab, ring.edges().get(i), opening.edge(i), found);
      }
    }
    return found;
  }

  private void alongEdge(Slab slab, Edge edge, EdgeSetting setting, List<Joint> found) {
    if (!setting.needsIsolation()) {
      return;
    }
    List<Edge> bare = new ArrayList<>(List.of(edge));
    for (BoxOut b : slab.boxOuts()) {
      Ring ring = b.outline().ring();
      bare = bare.stream().flatMap(e -> outside(e, ring).stream()).toList();
    }
    for (Segment s : filled) {
      bare = bare.stream().flatMap(e -> without(e, s).stream()).toList();
    }
    for (Edge e : bare) {
      boolean there =
          slab.lockedJoints().stream()
              .anyMatch(j -> j.kind() == JointKind.ISOLATION && covers(j, e));
      if (e.length() >= SHORTEST && !there) {
        found.add(Joint.of("", JointKind.ISOLATION, Path.of(e), Purpose.ISOLATION));
      }
    }
    bare.forEach(e -> asSegment(e).ifPresent(filled::add));
  }

  private static Optional<Segment> asSegment(Edge e) {
    return switch (e) {
      case Segment s -> Optional.of(s);
      case Arc a -> Optional.empty();
    };
  }

  private static List<Edge> without(Edge e, Segment taken) {
    if (!(e instanceof Segment s)) {
      return List.of(e);
    }
    Segment common = common(s, taken);
    if (common.length() < SHORTEST) {
      return List.of(e);
    }
    return List.of(new Segment(s.start(), common.start()), new Segment(common.end(), s.end()));
  }

  /** The part of {@code s} along which {@code t} runs; of no length when there is none. */
  private static Segment common(Segment s, Segment t) {
    Segment none = new Segment(s.start(), s.start());
    if (s.length() == 0 || t.length() == 0) {
      return none;
    }
    Point u = s.direction(0);
    double a = t.start().minus(s.start()).dot(u);
    double b = t.end().minus(s.start()).dot(u);
    double from = Math.max(0, Math.min(a, b));
    double to = Math.min(s.length(), Math.max(a, b));
    if (to - from <= 0) {
      return none;
    }
    Point p = s.start().plus(u.times(from));
    Point q = s.start().plus(u.times(to));
    return t.distance(p) <= NEAR && t.distance(q) <= NEAR ? new Segment(p, q) : none;
  }

  /** The parts of an edge outside a ring that it may run through. */
  private static List<Edge> outside(Edge e, Ring ring) {
    List<Double> shares = new ArrayList<>(List.of(0.0, 1.0));
    for (Edge side : ring.edges()) {
      Carriers.of(side)
          .crossings(e)
          .forEach(
              c -> {
                if (side.distance(e.at(c.share())) < 0.1) {
                  shares.add(c.share());
                }
              });
    }
    shares.sort(null);
    List<Edge> kept = new ArrayList<>();
    double from = 0;
    for (int i = 1; i < shares.size(); i++) {
      double to = shares.get(i);
      Point middle = e.at((shares.get(i - 1) + to) / 2);
      // A box-out that ends at the edge has a side of its own along it.
      boolean inside = ring.contains(middle) || ring.distance(middle) < ON_RING;
      if (inside && to > shares.get(i - 1)) {
        if (shares.get(i - 1) > from) {
          kept.add(e.part(from, shares.get(i - 1)));
        }
        from = to;
      }
    }
    if (from < 1) {
      kept.add(e.part(from, 1));
    }
    return kept;
  }
}
