package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
    return switch (clip.crosses.size()) {
      case 0 -> clip.isWithin() ? Optional.of(outline) : Optional.empty();
      case 2 -> clip.cut();
      default -> Optional.empty();
    };
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
    Cross one = crosses.get(0);
    Cross two = crosses.get(1);
    if (one.ring() != two.ring()) {
      return Optional.empty();
    }
    boolean first = isFree(beside(shape, one.onShape(), 1));
    Cross from = first ? one : two;
    Cross to = first ? two : one;
    List<Edge> free = stretch(shape, from.onShape(), to.onShape());
    Ring ring = ring(from.ring());
    List<Edge> back = stretch(ring, to.onRing(), from.onRing());
    if (back.isEmpty() || !isInShape(back)) {
      back =
          stretch(ring, from.onRing(), to.onRing()).reversed().stream()
              .map(Edge::reversed)
              .toList();
    }
    if (free.isEmpty() || back.isEmpty() || !isInShape(back)) {
      return Optional.empty();
    }
    double least =
        Math.min(
            angle(free.getFirst().direction(0), back.getLast().direction(1)),
            angle(free.getLast().direction(1), back.getFirst().direction(0)));
    if (least < LEAST_ANGLE - ANGLE_SHADE) {
      return Optional.empty();
    }
    List<Vertex> vertices = new ArrayList<>();
    free.forEach(e -> vertices.add(vertex(e)));
    back.forEach(e -> vertices.add(vertex(e)));
    return vertices.size() < 2 ? Optional.empty() : Optional.of(new Outline(vertices));
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

  /** A ring's edges from one place on to another. */
  private static List<Edge> stretch(Ring ring, double from, double to) {
    int n = ring.edges().size();
    List<Edge> found = new ArrayList<>();
    double end = to > from ? to : to + n;
    for (int i = (int) Math.floor(from); i < end; i++) {
      Edge e = ring.edges().get(i % n);
      double a = Math.max(0, from - i);
      double b = Math.min(1, end - i);
      if ((b - a) * e.length() > SAME / 10) {
        found.add(a == 0 && b == 1 ? e : e.part(a, b));
      }
    }
    return found;
  }
}
