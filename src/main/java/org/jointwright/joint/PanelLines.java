package org.jointwright.joint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The lines of panel joints that run whole from edge to edge of a slab, over openings and box-outs
 * where they lie in the way: where a pour can stop.
 */
public final class PanelLines {
  /** Ends this near to each other are one, inches: as far as a tee counts as met. */
  private static final double MEET = 1;

  /** An end this near to an edge or a formed joint ends there, inches. */
  private static final double ON_EDGE = Lines.REACH;

  /** A line of forms bends by this at most where it crosses another, as a cosine: 10 degrees. */
  private static final double STRAIGHT = Math.cos(Math.toRadians(10));

  /** How far a line may go on beside itself on the far side of an opening, inches. */
  private static final double BESIDE = 2;

  /**
   * A line.
   *
   * @param joints the ids of its joints, in their order in the slab
   * @param length how long they are together, inches
   */
  public record Whole(List<String> joints, double length) {
    /** Copies the list. */
    public Whole {
      joints = List.copyOf(joints);
    }
  }

  private final List<Joint> free;
  private final List<Ring> rings = new ArrayList<>();
  private final List<Path> formed;

  private PanelLines(SlabLayout layout) {
    Slab slab = layout.slab();
    free =
        slab.joints().stream()
            .filter(j -> j.kind() == JointKind.CONTRACTION && !j.locked())
            .filter(j -> j.purpose() != Purpose.CORNER)
            .toList();
    rings.add(slab.outline().ring());
    slab.openings().forEach(o -> rings.add(o.outline().ring()));
    slab.boxOuts().forEach(b -> rings.add(b.outline().ring()));
    formed =
        slab.joints().stream()
            .filter(j -> j.kind() != JointKind.CONTRACTION)
            .map(Joint::path)
            .toList();
  }

  /** The whole lines of a slab, in the order of their first joints; locked joints are in none. */
  public static List<Whole> of(SlabLayout layout) {
    return new PanelLines(layout).lines();
  }

  private List<Whole> lines() {
    List<Whole> lines = new ArrayList<>();
    Set<Integer> used = new HashSet<>();
    for (int i = 0; i < free.size(); i++) {
      if (used.contains(i)) {
        continue;
      }
      Set<Integer> chain = new java.util.TreeSet<>(Set.of(i));
      boolean whole = free.get(i).path().isClosed();
      if (!whole) {
        boolean ahead = follow(i, true, chain);
        boolean back = follow(i, false, chain);
        whole = ahead && back;
      }
      used.addAll(chain);
      if (whole) {
        List<Joint> joints = chain.stream().map(free::get).toList();
        double length = joints.stream().mapToDouble(j -> j.path().length()).sum();
        lines.add(new Whole(joints.stream().map(Joint::id).toList(), length));
      }
    }
    return lines;
  }

  /** Goes on from one end of a joint to the next; whether the way ends at an edge of the slab. */
  private boolean follow(int from, boolean atEnd, Set<Integer> chain) {
    int at = from;
    boolean end = atEnd;
    // Each step takes a joint that is not in the chain yet, so there is a last one.
    Optional<Next> next = next(at, end, chain);
    while (next.isPresent()) {
      at = next.get().joint();
      end = !next.get().entersAtEnd();
      chain.add(at);
      next = next(at, end, chain);
    }
    return isOnEdge(end(at, end));
  }

  /** The joint that goes on, and at which of its ends it is come to. */
  private record Next(int joint, boolean entersAtEnd) {}

  private Optional<Next> next(int at, boolean end, Set<Integer> chain) {
    Point p = end(at, end);
    Point onward = onward(at, end);
    Next best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < free.size(); k++) {
      if (chain.contains(k) || free.get(k).path().isClosed()) {
        continue;
      }
      for (boolean enters : new boolean[] {false, true}) {
        Point q = end(k, enters);
        double gap = p.distance(q);
        boolean goesOn = onward(k, enters).dot(onward) < -STRAIGHT;
        if (goesOn && gap < least && (gap <= MEET || isOverOpening(p, q, onward))) {
          best = new Next(k, enters);
          least = gap;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** Whether a line goes on at {@code q} on the far side of what is left out of the slab. */
  private boolean isOverOpening(Point p, Point q, Point onward) {
    Point way = q.minus(p);
    if (way.dot(onward) <= 0 || Math.abs(way.cross(onward)) > BESIDE) {
      return false;
    }
    return rings.stream().skip(1).anyMatch(r -> isAcross(r, p, q));
  }

  private static boolean isAcross(Ring ring, Point p, Point q) {
    return ring.distance(p) <= ON_EDGE
        && ring.distance(q) <= ON_EDGE
        && ring.contains(p.towards(q, 0.5));
  }

  private boolean isOnEdge(Point p) {
    return rings.stream().anyMatch(r -> r.distance(p) <= ON_EDGE)
        || formed.stream().anyMatch(f -> f.distance(p) <= ON_EDGE);
  }

  private Point end(int joint, boolean last) {
    Path path = free.get(joint).path();
    return last ? path.end() : path.start();
  }

  /** The direction in which a joint would go on beyond its end. */
  private Point onward(int joint, boolean last) {
    Path path = free.get(joint).path();
    return last
        ? path.edges().getLast().direction(1)
        : path.edges().getFirst().direction(0).times(-1);
  }
}
