package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/**
 * Joints of a slab moved or taken out by hand. The others stay where they are: whoever moves one
 * joint has looked at the rest and found them good. Only an end that stood on what was moved goes
 * along its own line to where that stands now.
 */
final class JointsByHand {
  /** An end this near to a line stands on it, inches: the rules' tolerance on lengths. */
  private static final double ON = 0.5;

  /** A joint shorter than this is none, inches. */
  private static final double SHORTEST = 6;

  /** The sine up to which two joints run the same way. */
  private static final double SAME_WAY = 1e-3;

  private final Slab slab;
  private final Map<String, Path> to;

  private JointsByHand(Slab slab, Map<String, Path> to) {
    this.slab = slab;
    this.to = to;
  }

  /**
   * The slab with joints moved, which locks them; what runs into an opening or a box-out is cut
   * there and goes on behind it.
   *
   * @param to where each runs now, by its id
   */
  static Slab moved(Slab slab, Map<String, Path> to) {
    return new JointsByHand(slab, to).moved();
  }

  /** The slab without a joint; what ended on it alone runs on to the next line. */
  static Slab without(Slab slab, String joint) {
    Path gone = path(slab, joint);
    Slab left =
        slab.withLaid(
            slab.joints().stream().filter(j -> !j.id().equals(joint)).toList(), slab.boxOuts());
    JointsByHand hand = new JointsByHand(left, Map.of());
    List<Joint> joints =
        left.joints().stream()
            .map(j -> canFollow(j) && hand.hangs(j, List.of(gone)) ? hand.ranOn(j, gone) : j)
            .toList();
    return left.withLaid(joints, left.boxOuts());
  }

  /**
   * The slab with the ends of its locked joints gone along with its rim: an end that stood on it
   * goes along its own line to where the rim is now.
   *
   * @param was the slab before its shape changed
   */
  static Slab along(Slab was, Slab now) {
    JointsByHand before = new JointsByHand(was, Map.of());
    JointsByHand after = new JointsByHand(now, Map.of());
    List<Joint> joints =
        now.joints().stream()
            .map(j -> j.locked() && canFollow(j) ? after.alongRim(j, before) : j)
            .toList();
    return now.withLaid(joints, now.boxOuts());
  }

  private Joint alongRim(Joint joint, JointsByHand before) {
    Point start = onRim(joint, start(joint), before);
    Point end = onRim(joint, end(joint), before);
    boolean isLong = end.minus(start).dot(end(joint).minus(start(joint)).unit()) >= SHORTEST;
    return isLong ? joint.withPath(Path.straight(start, end)) : joint;
  }

  private Point onRim(Joint joint, Point end, JointsByHand before) {
    boolean stood = before.rims().anyMatch(e -> e.distance(end) <= ON);
    boolean stands = rims().anyMatch(e -> e.distance(end) <= ON);
    return !stood || stands
        ? end
        : rims()
            .flatMap(e -> Crossing.of(line(joint), e).stream())
            .map(Crossing::at)
            .min(Comparator.comparingDouble(p -> p.distance(end)))
            .orElse(end);
  }

  private static Path path(Slab slab, String joint) {
    return slab.joints().stream()
        .filter(j -> j.id().equals(joint))
        .findFirst()
        .map(Joint::path)
        .orElseThrow(
            () -> new IllegalArgumentException("slab " + slab.id() + " has no joint " + joint));
  }

  private Slab moved() {
    List<Path> before = to.keySet().stream().sorted().map(id -> path(slab, id)).toList();
    List<Joint> moved = new ArrayList<>();
    List<Joint> more = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    slab.joints().forEach(j -> taken.add(j.id()));
    for (Joint j : slab.joints()) {
      if (to.containsKey(j.id())) {
        List<Path> pieces = pieces(to.getOrDefault(j.id(), j.path()));
        Joint now = j.withLocked(true);
        moved.add(now.withPath(pieces.getFirst()));
        for (Path piece : pieces.subList(1, pieces.size())) {
          more.add(now.withPath(piece).withId(free(taken)));
        }
      }
    }
    List<Path> now = Stream.concat(moved.stream(), more.stream()).map(Joint::path).toList();
    List<Joint> joints = new ArrayList<>();
    for (Joint j : slab.joints()) {
      if (to.containsKey(j.id())) {
        joints.add(moved.removeFirst());
      } else if (canFollow(j)) {
        followed(j, before, now).ifPresent(joints::add);
      } else {
        joints.add(j);
      }
    }
    joints.addAll(more);
    return slab.withLaid(joints, slab.boxOuts());
  }

  /** An id that no joint of the slab has; taken from now on. */
  private static String free(Set<String> taken) {
    int n = 1;
    while (!taken.add("J" + n)) {
      n++;
    }
    return "J" + n;
  }

  private static boolean canFollow(Joint joint) {
    return joint.kind() != JointKind.ISOLATION
        && joint.path().edges().size() == 1
        && joint.path().edges().getFirst() instanceof Segment;
  }

  /** What of a straight path runs through the concrete, in order; the path where nothing does. */
  private List<Path> pieces(Path path) {
    if (path.edges().size() != 1 || !(path.edges().getFirst() instanceof Segment whole)) {
      return List.of(path);
    }
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    rims().forEach(e -> Crossing.of(whole, e).forEach(c -> cuts.add(c.first())));
    List<Path> pieces = new ArrayList<>();
    double from = 0;
    for (double t : cuts) {
      boolean isLong = (t - from) * whole.length() >= SHORTEST;
      if (isLong && isConcrete(whole.at((from + t) / 2))) {
        pieces.add(Path.straight(whole.at(from), whole.at(t)));
      }
      from = t;
    }
    boolean isWhole = pieces.isEmpty() || covers(pieces, whole);
    return isWhole ? List.of(path) : pieces;
  }

  /** Whether nothing but ends was cut off, by less than counts: then the path is as it was. */
  private static boolean covers(List<Path> pieces, Segment whole) {
    return pieces.size() == 1 && pieces.getFirst().length() > whole.length() - ON;
  }

  private boolean isConcrete(Point p) {
    return slab.region().contains(p)
        && slab.boxOuts().stream()
            .map(b -> b.outline().ring())
            .noneMatch(r -> r.contains(p) && r.distance(p) > ON);
  }

  /** A joint whose ends go along with what they stood on; empty where nothing is left of it. */
  private Optional<Joint> followed(Joint joint, List<Path> before, List<Path> now) {
    Point start =
        hangs(start(joint), joint, before) ? meeting(joint, start(joint), now) : start(joint);
    Point end = hangs(end(joint), joint, before) ? meeting(joint, end(joint), now) : end(joint);
    if (start.equals(start(joint)) && end.equals(end(joint))) {
      return Optional.of(joint);
    }
    double length = end.minus(start).dot(end(joint).minus(start(joint)).unit());
    boolean isGone = length < SHORTEST && length < joint.path().length() / 2;
    return isGone ? Optional.empty() : Optional.of(joint.withPath(Path.straight(start, end)));
  }

  private static Point start(Joint joint) {
    return joint.path().start();
  }

  private static Point end(Joint joint) {
    return joint.path().end();
  }

  private boolean hangs(Joint joint, List<Path> on) {
    return hangs(start(joint), joint, on) || hangs(end(joint), joint, on);
  }

  /** Whether an end stands on one of some joints, and on nothing else that would hold it. */
  private boolean hangs(Point end, Joint joint, List<Path> on) {
    return on.stream().anyMatch(p -> p.distance(end) <= ON)
        && rims().noneMatch(e -> e.distance(end) <= ON)
        && slab.joints().stream()
            .filter(j -> !j.equals(joint) && !to.containsKey(j.id()))
            .noneMatch(j -> j.path().distance(end) <= ON && !runsLike(j, joint));
  }

  /** Filler holds no end, nor does what goes on in the same line; arcs do. */
  private static boolean runsLike(Joint one, Joint other) {
    if (one.kind() == JointKind.ISOLATION || !canFollow(one)) {
      return one.kind() == JointKind.ISOLATION;
    }
    Point u = end(one).minus(start(one)).unit();
    Point v = end(other).minus(start(other)).unit();
    return Math.abs(u.cross(v)) <= SAME_WAY;
  }

  /** Where the line of a joint meets what was moved, nearest to that end; the end if nowhere. */
  private Point meeting(Joint joint, Point end, List<Path> now) {
    Segment line = line(joint);
    return now.stream()
        .flatMap(p -> p.edges().stream())
        .flatMap(e -> Crossing.of(line, reaching(e)).stream())
        .map(Crossing::at)
        .min(Comparator.comparingDouble(p -> p.distance(end)))
        .orElse(end);
  }

  /** An end that stood on what is gone, run on to the next line. */
  private Joint ranOn(Joint joint, Path gone) {
    Point start =
        hangs(start(joint), joint, List.of(gone))
            ? onward(joint, end(joint), start(joint))
            : start(joint);
    Point end =
        hangs(end(joint), joint, List.of(gone))
            ? onward(joint, start(joint), end(joint))
            : end(joint);
    return joint.withPath(Path.straight(start, end));
  }

  private Point onward(Joint joint, Point from, Point end) {
    Point way = end.minus(from).unit();
    boolean goesOn =
        slab.joints().stream()
            .anyMatch(j -> !j.equals(joint) && j.path().distance(end) <= ON && canFollow(j));
    Stream<Edge> joints =
        slab.joints().stream()
            .filter(j -> !j.equals(joint) && j.kind() != JointKind.ISOLATION)
            .flatMap(j -> j.path().edges().stream());
    return goesOn
        ? end
        : Stream.concat(rims(), joints)
            .flatMap(e -> Crossing.of(line(joint), e).stream())
            .map(Crossing::at)
            .filter(p -> p.minus(end).dot(way) > ON)
            .min(Comparator.comparingDouble(p -> p.distance(end)))
            .orElse(end);
  }

  /** The line that a joint runs along, beyond the slab at both its ends. */
  private Segment line(Joint joint) {
    Point way = end(joint).minus(start(joint)).unit();
    double far = slab.outline().ring().perimeter();
    return new Segment(start(joint).minus(way.times(far)), end(joint).plus(way.times(far)));
  }

  private static Edge reaching(Edge edge) {
    if (edge instanceof Segment s) {
      Point way = s.end().minus(s.start()).unit().times(ON);
      return new Segment(s.start().minus(way), s.end().plus(way));
    }
    return edge;
  }

  private Stream<Edge> rims() {
    Stream<Ring> holes =
        Stream.concat(
            slab.openings().stream().map(o -> o.outline().ring()),
            slab.boxOuts().stream().map(b -> b.outline().ring()));
    return Stream.concat(Stream.of(slab.outline().ring()), holes).flatMap(r -> r.edges().stream());
  }
}
