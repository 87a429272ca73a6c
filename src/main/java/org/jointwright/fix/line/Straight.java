package org.jointwright.fix.line;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.shape.Traced;

/**
 * Straight contraction joints that run on from each other, so that they are one line.
 *
 * @param joints the joints, the one that was asked for first
 */
public record Straight(List<Joint> joints) {
  /** Joints that turn by more than this are two lines; the sine of a degree. */
  private static final double ONE_LINE = 0.0175;

  /** Copies the list. */
  public Straight {
    joints = List.copyOf(joints);
  }

  /** The line that a joint belongs to; empty where it is no straight contraction joint. */
  public static Optional<Straight> of(Floor floor, Joint joint) {
    if (!isStraight(joint)) {
      return Optional.empty();
    }
    Map<String, Joint> found = new LinkedHashMap<>();
    found.put(joint.id(), joint);
    Deque<Joint> open = new ArrayDeque<>(found.values());
    while (!open.isEmpty()) {
      Joint from = open.poll();
      for (Joint j : floor.slab().joints()) {
        if (!found.containsKey(j.id()) && isStraight(j) && runsOn(from, j)) {
          found.put(j.id(), j);
          open.add(j);
        }
      }
    }
    return Optional.of(new Straight(List.copyOf(found.values())));
  }

  /** A joint alone as a line; empty where it is no straight contraction joint. */
  public static Optional<Straight> alone(Joint joint) {
    return isStraight(joint) ? Optional.of(new Straight(List.of(joint))) : Optional.empty();
  }

  /** Whether a joint is a straight contraction joint. */
  public static boolean isStraight(Joint joint) {
    Path path = Traced.path(joint.path());
    return joint.kind() == JointKind.CONTRACTION
        && path.edges().size() == 1
        && path.edges().getFirst() instanceof Segment s
        && s.length() > Floor.MEET;
  }

  private static boolean runsOn(Joint a, Joint b) {
    Point u = way(a);
    return Math.abs(u.cross(way(b))) < ONE_LINE
        && (meet(a.path().start(), b.path())
            || meet(a.path().end(), b.path())
            || meet(b.path().start(), a.path())
            || meet(b.path().end(), a.path()));
  }

  private static boolean meet(Point end, Path path) {
    return path.distance(end) <= Floor.MEET;
  }

  private static Point way(Joint j) {
    return j.path().end().minus(j.path().start()).unit();
  }

  /** A place on it. */
  public Point at() {
    return joints.getFirst().path().edges().getFirst().at(0.5);
  }

  /** Its direction, a unit vector. */
  public Point heading() {
    return way(joints.getFirst());
  }

  /** The ids of its joints. */
  public Set<String> ids() {
    return joints.stream().map(Joint::id).collect(Collectors.toSet());
  }

  /** Whether its user locked a part of it. */
  public boolean isLocked() {
    return joints.stream().anyMatch(Joint::locked);
  }

  /** The distance of a place from the line, on its left positive, inches. */
  public double off(Point p) {
    return heading().cross(p.minus(at()));
  }

  /** Its two ends, the first one first in its heading. */
  public List<Point> ends() {
    Point u = heading();
    List<Point> ends =
        joints.stream()
            .flatMap(j -> java.util.stream.Stream.of(j.path().start(), j.path().end()))
            .sorted(java.util.Comparator.comparingDouble(p -> p.dot(u)))
            .toList();
    return List.of(ends.getFirst(), ends.getLast());
  }
}
