package org.jointwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Meeting;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Side;
import org.jointwright.joint.SlabLayout;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Corners;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Corner;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Traced;
import org.jspecify.annotations.Nullable;

/**
 * What the joints of a slab can take their places from: its edges as closed rounds, the concrete on
 * their left, and its joints.
 */
final class Ground {
  /** An end this near to a line or a corner is on it, inches: what a layout draws together. */
  static final double ON = Tolerance.LENGTH_INCHES + 1.0 / 16;

  /**
   * A corner of the concrete.
   *
   * @param corner where it is and its angle
   * @param before the side that arrives
   * @param after the side that leaves
   */
  record Spot(Corner corner, Side before, Side after) {
    Point at() {
      return corner.at();
    }
  }

  private final Layout layout;
  private final Slab slab;
  private final List<List<Side>> rounds = new ArrayList<>();
  private final List<Spot> spots = new ArrayList<>();
  private final List<Joint> joints;
  private final Lettering lettering;
  private final List<Meeting> meetings;
  private @Nullable Anchors anchors;

  Ground(Layout layout, SlabLayout laid) {
    this.layout = layout;
    slab = laid.slab();
    lettering = Lettering.of(layout.plan());
    meetings = Meeting.of(layout.plan());
    joints =
        slab.joints().stream()
            .filter(j -> j.kind() != JointKind.ISOLATION)
            .map(j -> j.withPath(Traced.path(j.path())))
            .filter(j -> j.path().length() >= Tolerance.LENGTH_INCHES)
            .toList();
    List<Joint> filler =
        slab.joints().stream().filter(j -> j.kind() == JointKind.ISOLATION).toList();
    for (Panel p : Layouts.of(layout.plan(), slab.withLaid(filler, slab.boxOuts())).panels()) {
      rounds.add(p.outer());
      rounds.addAll(p.holes());
    }
    for (List<Side> round : rounds) {
      for (Corner c : Corner.of(round.stream().map(Side::edge).toList(), ON)) {
        spots.add(new Spot(c, round.get(c.before()), round.get(c.after())));
      }
      addRoundedOff(round);
    }
  }

  /** The rules take a small concave arc for the corner whose edge it rounds off. */
  private void addRoundedOff(List<Side> round) {
    int n = round.size();
    for (int i = 0; i < n; i++) {
      Side s = round.get(i);
      if (s.edge() instanceof Arc a
          && a.sweep() < 0
          && a.radius() < Corners.ROUNDED_OFF.value().inches()) {
        Corner c =
            new Corner(a.middle(), 180 - Math.toDegrees(a.sweep()), (i + n - 1) % n, (i + 1) % n);
        spots.add(new Spot(c, round.get((i + n - 1) % n), round.get((i + 1) % n)));
      }
    }
  }

  Plan plan() {
    return layout.plan();
  }

  Layout layout() {
    return layout;
  }

  Slab slab() {
    return slab;
  }

  /** The rounds of the edges, the concrete on their left. */
  List<List<Side>> rounds() {
    return rounds;
  }

  /** Every side of them. */
  List<Side> sides() {
    return rounds.stream().flatMap(List::stream).toList();
  }

  /** The corners of the concrete, straight places where an arc begins among them. */
  List<Spot> spots() {
    return spots;
  }

  /** The joints but filler, arcs that came as chords found again. */
  List<Joint> joints() {
    return joints;
  }

  /** The joints that others are set out between. */
  Anchors anchors() {
    Anchors found = anchors;
    if (found == null) {
      found = new Anchors(this);
      anchors = found;
    }
    return found;
  }

  /** Where slabs of the plan meet. */
  List<Meeting> meetings() {
    return meetings;
  }

  Lettering lettering() {
    return lettering;
  }

  /** The letter of a corner that stands at a place or within reach of it. */
  Optional<String> letter(Point p) {
    return lettering.corners().stream()
        .filter(c -> c.at().distance(p) <= ON)
        .min(java.util.Comparator.comparingDouble(c -> c.at().distance(p)))
        .map(org.jointwright.plan.LetteredCorner::letter);
  }

  /** The sides that pass a place. */
  List<Side> sidesAt(Point p) {
    return sides().stream().filter(s -> s.edge().distance(p) <= ON).toList();
  }

  /** Whether a place is on an edge of the concrete. */
  boolean isOnEdge(Point p) {
    return !sidesAt(p).isEmpty();
  }

  /** The lines of the joints, each with what it belongs to. */
  List<Map.Entry<Edge, Source>> jointLines() {
    List<Map.Entry<Edge, Source>> lines = new ArrayList<>();
    for (Joint j : joints) {
      j.path().edges().forEach(e -> lines.add(Map.entry(e, new Source.OnJoint(j.id()))));
    }
    return lines;
  }
}
