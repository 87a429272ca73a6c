package org.jointwright.joint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Joints that go on from one another in one straight line are cut as one: a crew snaps one line.
 */
final class Straights {
  /** Ends nearer than this meet; inches. */
  private static final double MEET = 0.1;

  /** An end farther than this off the line between the far ends is a bend; inches. */
  private static final double BEND = 1.0 / 32;

  /** A chord of an arc stands no farther off it than this; inches. */
  private static final double CHORD = 0.25;

  private Straights() {}

  /** A line and the joints it is made of, in the order they follow each other. */
  record Run(Path path, List<Joint> joints) {}

  /** The joints as lines, in the order of their first parts. */
  static List<Run> of(List<Joint> joints) {
    List<Run> runs = new ArrayList<>();
    joints.forEach(j -> pieces(j.path()).forEach(p -> runs.add(new Run(p, List.of(j)))));
    Ends ends = new Ends();
    for (int i = 0; i < runs.size(); i++) {
      ends.put(i, runs.get(i).path());
    }
    Set<Integer> gone = new HashSet<>();
    for (int i = 0; i < runs.size(); i++) {
      if (!gone.contains(i)) {
        OptionalInt grown = OptionalInt.of(i);
        while (grown.isPresent()) {
          grown = joinOne(grown.getAsInt(), runs, ends, gone);
        }
      }
    }
    return IntStream.range(0, runs.size())
        .filter(i -> !gone.contains(i))
        .mapToObj(runs::get)
        .toList();
  }

  /** A path whole where it is straight or one arc, told by chords or not; else edge by edge. */
  private static List<Path> pieces(Path path) {
    if (path.edges().size() == 1) {
      return List.of(path);
    }
    Point middle = path.edges().get(path.edges().size() / 2).start();
    if (path.isClosed() || path.edges().size() == 2) {
      return path.edges().stream().map(Path::of).toList();
    }
    Edge arc = Arc.through(path.start(), middle, path.end());
    boolean all =
        path.edges().stream()
            .allMatch(e -> arc.distance(e.start()) < BEND && arc.distance(e.at(0.5)) < CHORD);
    return all ? List.of(Path.of(arc)) : path.edges().stream().map(Path::of).toList();
  }

  /** Joins line {@code i} with the first that goes on from it; the number of what comes of it. */
  private static OptionalInt joinOne(int i, List<Run> runs, Ends ends, Set<Integer> gone) {
    for (int k : ends.near(runs.get(i).path())) {
      int first = Math.min(i, k);
      int second = Math.max(i, k);
      Run joined = first == second ? runs.get(i) : joined(runs.get(first), runs.get(second));
      if (joined.joints().size() > runs.get(first).joints().size()) {
        ends.remove(first, runs.get(first).path());
        ends.remove(second, runs.get(second).path());
        ends.put(first, joined.path());
        runs.set(first, joined);
        gone.add(second);
        return OptionalInt.of(first);
      }
    }
    return OptionalInt.empty();
  }

  /** Both in one line, or only the first where they are none. */
  private static Run joined(Run a, Run b) {
    if (!alike(a, b)) {
      return a;
    }
    Point a1 = a.path().start();
    Point a2 = a.path().end();
    Point b1 = b.path().start();
    Point b2 = b.path().end();
    if (a2.distance(b1) < MEET && straight(a1, a2, b2)) {
      return run(a, b, a1, b2);
    }
    if (a2.distance(b2) < MEET && straight(a1, a2, b1)) {
      return run(a, b, a1, b1);
    }
    if (a1.distance(b2) < MEET && straight(b1, a1, a2)) {
      return run(b, a, b1, a2);
    }
    if (a1.distance(b1) < MEET && straight(b2, a1, a2)) {
      return run(b, a, b2, a2);
    }
    return a;
  }

  private static Run run(Run first, Run second, Point from, Point to) {
    List<Joint> joints = new ArrayList<>(first.joints());
    joints.addAll(second.joints());
    return new Run(Path.straight(from, to), joints);
  }

  /** Both straight, and made the same way. */
  private static boolean alike(Run a, Run b) {
    Joint j = a.joints().getFirst();
    Joint k = b.joints().getFirst();
    return isStraight(a.path())
        && isStraight(b.path())
        && j.how().equals(k.how())
        && j.depth().equals(k.depth())
        && j.width().equals(k.width());
  }

  private static boolean isStraight(Path path) {
    return path.edges().size() == 1 && path.edges().getFirst() instanceof Segment;
  }

  private static boolean straight(Point from, Point over, Point to) {
    // The same stretch there and back: a joint that is listed twice has no line to go on in.
    if (from.equals(to)) {
      return false;
    }
    Point u = to.minus(from);
    Point v = over.minus(from);
    double along = u.unit().dot(v);
    return Math.abs(u.unit().cross(v)) < BEND && along > 0 && along < u.norm();
  }
}
