package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jointwright.practice.Corners;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * What a joint is seen beside: the slab's own sides that bound the panels along it. Where these run
 * two ways only, square to each other, a joint is expected to as well, whatever the slab does
 * elsewhere: common practice, no source.
 */
final class Company {
  /** Shorter stretches of a side beside a panel are hardly seen, inches. */
  private static final double SEEN = 12;

  /** What is this near to a joint's end is met by it, inches. */
  private static final double MET = 0.5;

  /** Joints that lean less from each other are one line: the sine of a degree. */
  private static final double IN_LINE = Math.sin(Math.toRadians(1));

  private static final double NEARLY = Math.sin(Math.toRadians(3));

  private static final double TIGHT = Corners.TIGHT_RADIUS.value().inches();

  private final Draft draft;
  private final Set<Integer> joints = new HashSet<>();
  private Point from;
  private Point to;

  private Company(Draft draft, int joint) {
    this.draft = draft;
    this.joints.add(joint);
    this.from = draft.lines().get(joint).end(false);
    this.to = draft.lines().get(joint).end(true);
    extend();
  }

  /**
   * Whether two or more of the slab's sides bound the pieces along a line of joints, all along one
   * pair of axes and none of them a bow. Where the line runs from one side to another that is
   * parallel to it, a slanted side that begins where the line ends does not count: it is behind it.
   *
   * @param joint the number in the draft of one of its joints
   */
  static boolean isSquare(Draft draft, int joint) {
    return new Company(draft, joint).isSquare();
  }

  private boolean isSquare() {
    List<Edge> sides = new ArrayList<>();
    Set<Integer> tags = new HashSet<>();
    for (Piece p : draft.pieces()) {
      if (p.outer().tags().stream().anyMatch(joints::contains)) {
        for (int l = 0; l < p.loopCount(); l++) {
          Loop loop = p.loop(l);
          for (int i = 0; i < loop.size(); i++) {
            Edge e = loop.edge(i);
            if (loop.isHard(i) && (e.length() > SEEN || e instanceof Arc)) {
              sides.add(e);
              tags.add(loop.tag(i));
            }
          }
        }
      }
    }
    Optional<Edge> crossed = crossed();
    if (crossed.isPresent()) {
      Point along = crossed.get().direction(0);
      return sides.stream()
          .filter(e -> isAside(e, along, SEEN))
          .allMatch(e -> e instanceof Segment && touches(e));
    }
    if (tags.size() < 2) {
      return false;
    }
    Point along = longest(sides).direction(0);
    return sides.stream().noneMatch(e -> isAside(e, along, SEEN));
  }

  /** Takes in the joints that go on in line with those that are known. */
  private void extend() {
    Point along = draft.lines().get(joints.iterator().next()).path().direction(0);
    boolean more = true;
    while (more) {
      more = false;
      for (int k = 0; k < draft.lines().size(); k++) {
        Laid l = draft.lines().get(k);
        if (!joints.contains(k)
            && Math.abs(l.path().direction(0).cross(along)) < IN_LINE
            && touches(l.path())) {
          joints.add(k);
          boolean first = l.end(false).distance(from) < MET || l.end(false).distance(to) < MET;
          Point near = l.end(!first);
          Point far = l.end(first);
          if (near.distance(from) < MET) {
            from = far;
          } else {
            to = far;
          }
          more = true;
        }
      }
    }
  }

  /** The side that the line starts from, where it ends on one parallel to it. */
  private Optional<Edge> crossed() {
    return at(from).stream()
        .filter(
            a ->
                at(to).stream()
                    .anyMatch(b -> Math.abs(a.direction(0).cross(b.direction(0))) < NEARLY))
        .findFirst();
  }

  /** The straight sides that a place is on, two where it is a corner. */
  private List<Edge> at(Point p) {
    return draft.ground().loops().stream()
        .flatMap(l -> l.edges().stream())
        .filter(e -> e instanceof Segment && e.length() > SEEN && e.distance(p) < MET)
        .toList();
  }

  private boolean touches(Edge edge) {
    return Stream.of(edge.start(), edge.end())
        .anyMatch(p -> p.distance(from) < MET || p.distance(to) < MET);
  }

  private static Edge longest(List<Edge> sides) {
    Edge longest = sides.getFirst();
    for (Edge e : sides) {
      if (e instanceof Segment && (longest instanceof Arc || e.length() > longest.length())) {
        longest = e;
      }
    }
    return longest;
  }

  /**
   * Whether an edge is a bow, or long enough to give a direction and does not run along or square.
   */
  static boolean isAside(Edge edge, Point along, double least) {
    return edge instanceof Arc
        ? !isTight(edge)
        : edge.length() > least && off(edge.direction(0), along) > NEARLY;
  }

  /** Whether an edge is so small a circle that every direction from it is radial. */
  static boolean isTight(Edge edge) {
    return edge instanceof Arc a && a.radius() < TIGHT;
  }

  /** The sine of the angle off parallel or square, whichever is less. */
  static double off(Point u, Point v) {
    return Math.min(Math.abs(u.cross(v)), Math.abs(u.dot(v)));
  }
}
