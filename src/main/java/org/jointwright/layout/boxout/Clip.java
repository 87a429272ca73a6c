package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.layout.boxout.Chains.Chain;
import org.jointwright.layout.piece.Loop;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** Cuts a box-out off where it reaches past the slab or into an opening. */
final class Clip {
  /** Crossings nearer to each other than this are one, inches. */
  private static final double SAME = 0.05;

  /** No panel may keep less beside a box-out, degrees: the rules' least angle. */
  private static final double LEAST_ANGLE = 60;

  private static final double ANGLE_SHADE = 0.5;

  private final Ring shape;
  private final Region slab;
  private final List<Cross> crosses = new ArrayList<>();

  private record Cross(double onShape, int ring, double onRing, Point at) {}

  private Clip(Ring shape, Region slab) {
    this.shape = shape;
    this.slab = slab;
  }

  /**
   * The part of a convex outline, counter-clockwise, that lies in the slab. Empty where it lies in
   * no slab, comes apart, or would leave a panel with a sharp corner beside it.
   */
  static Optional<Outline> of(Outline outline, Region slab) {
    Clip clip = new Clip(outline.ring(), slab);
    clip.findCrosses();
    if (clip.crosses.isEmpty()) {
      return clip.isWithin() ? Optional.of(outline) : Optional.empty();
    }
    return clip.cut();
  }

  private boolean isWithin() {
    return shape.vertices().stream().allMatch(slab::contains)
        && slab.holes().stream().noneMatch(h -> shape.contains(h.edges().getFirst().start()));
  }

  private Ring ring(int k) {
    return k == 0 ? slab.outer() : slab.holes().get(k - 1);
  }

  private void findCrosses() {
    for (int i = 0; i < shape.edges().size(); i++) {
      for (int k = 0; k <= slab.holes().size(); k++) {
        List<Edge> edges = ring(k).edges();
        for (int j = 0; j < edges.size(); j++) {
          for (Crossing c : Crossing.of(shape.edges().get(i), edges.get(j))) {
            add(new Cross(i + c.first(), k, j + c.second(), c.at()));
          }
        }
      }
    }
    crosses.sort(Comparator.comparingDouble(Cross::onShape));
    crosses.removeIf(this::isTouch);
  }

  private void add(Cross c) {
    if (crosses.stream().noneMatch(o -> o.at().distance(c.at()) < SAME)) {
      crosses.add(c);
    }
  }

  /** Whether the outline only touches there, the slab on both sides or on neither. */
  private boolean isTouch(Cross c) {
    Point before = beside(shape, c.onShape(), -1);
    Point after = beside(shape, c.onShape(), 1);
    return isFree(before) == isFree(after);
  }

  /** A point of a ring a little before or after a place. */
  private static Point beside(Ring ring, double place, int way) {
    int n = ring.edges().size();
    int i = (int) Math.floor(place + way * 1e-7);
    Edge e = ring.edges().get(Math.floorMod(i, n));
    double share = Math.clamp(place - i, 0, 1);
    return e.at(Math.clamp(share + way * Math.min(0.4, 2 * SAME / e.length()), 0, 1));
  }

  private boolean isFree(Point p) {
    return slab.contains(p)
        && slab.outer().distance(p) > SAME / 10
        && slab.holes().stream().allMatch(h -> h.distance(p) > SAME / 10);
  }

  private Optional<Outline> cut() {
    List<Chain> chains = new ArrayList<>();
    List<Double> places = crosses.stream().map(Cross::onShape).toList();
    for (Chain c : between(shape, places, 0)) {
      if (isFree(c.edges().get(c.edges().size() / 2).at(0.5))) {
        chains.add(c);
      }
    }
    for (int k = 0; k <= slab.holes().size(); k++) {
      int number = k;
      Ring ring = ring(k);
      int n = ring.edges().size();
      // With the slab on the left: round an opening that is clockwise.
      boolean turned = ring.signedArea() > 0 == k > 0;
      List<Double> own =
          crosses.stream()
              .filter(c -> c.ring() == number)
              .map(c -> turned ? n - c.onRing() : c.onRing())
              .sorted()
              .toList();
      for (Chain c : between(turned ? ring.reversed() : ring, own, 1)) {
        if (isInShape(c.edges())) {
          chains.add(c);
        }
      }
    }
    List<Loop> loops = Chains.closed(chains);
    if (loops.size() != 1 || isSharp(loops.getFirst())) {
      return Optional.empty();
    }
    return Optional.of(new Outline(loops.getFirst().edges().stream().map(Clip::vertex).toList()));
  }

  /** The stretches of a ring between one place and the next. */
  private static List<Chain> between(Ring ring, List<Double> places, int tag) {
    List<Edge> edges = ring.edges();
    List<Chain> found = new ArrayList<>();
    List<Integer> tags = java.util.Collections.nCopies(edges.size(), tag);
    for (int i = 0; i < places.size(); i++) {
      Chain c = Chains.stretch(edges, tags, places.get(i), places.get((i + 1) % places.size()));
      if (!c.edges().isEmpty()) {
        found.add(c);
      }
    }
    return found;
  }

  /** Whether a panel would keep a sharp corner where the outline leaves the slab's edge. */
  private static boolean isSharp(Loop loop) {
    for (int i = 0; i < loop.size(); i++) {
      boolean leaves = loop.tag(i) != loop.tag(i - 1);
      Point u = loop.edge(i - 1).direction(1);
      Point v = loop.edge(i).direction(0);
      // Beside the box-out the panel has what is left of a straight angle.
      if (leaves && angle(u, v) < LEAST_ANGLE - ANGLE_SHADE) {
        return true;
      }
    }
    return false;
  }

  private boolean isInShape(List<Edge> stretch) {
    return stretch.stream()
        .allMatch(e -> shape.contains(e.at(0.5)) || shape.distance(e.at(0.5)) < SAME);
  }

  private static double angle(Point u, Point v) {
    return Math.toDegrees(Math.acos(Math.clamp(u.dot(v), -1, 1)));
  }

  private static Vertex vertex(Edge e) {
    return e instanceof Segment ? Vertex.at(e.start()) : Vertex.arc(e.start(), e.at(0.5));
  }
}
