package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.jointwright.joint.Source;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Ground;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.search.Score;
import org.jointwright.plan.Against;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The lines at which a slab mirrors onto itself: its outline with what the edges are against, its
 * openings and box-outs, the zones kept clear, the user's joints, and what joints like to meet.
 */
final class Mirrors {
  /** What is this near to its mirror image is at it, inches. */
  private static final double SAME = 0.2;

  /** Whole-inch marks let the two sides of a layout differ by so much, inches. */
  private static final double MARK = 1;

  /** An axis off by less runs along a side: the sine of half a degree. */
  private static final double ALONG = 0.01;

  private final Slab slab;
  private final Ground ground;
  private final List<Laid> locked;
  private final List<Point> seen;

  private Mirrors(Slab slab, Draft start, List<Point> seen) {
    this.slab = slab;
    this.ground = start.ground();
    this.locked = start.lines();
    this.seen = seen;
  }

  /**
   * The axes of a slab on its bench, those along its sides first; none of a disc or a ring, which
   * has no end of them.
   *
   * @param start the slab with the user's joints in it
   */
  static List<Mirror> of(Slab slab, Draft start, Score score) {
    return new Mirrors(slab, start, score.targets()).find();
  }

  private List<Mirror> find() {
    Loop loop = ground.loops().getFirst();
    Point middle = middle(loop);
    if (loop.edges().stream()
        .allMatch(e -> e instanceof Arc a && a.centre().distance(middle) < SAME)) {
      return List.of();
    }
    Point first = loop.edge(0).start();
    List<Mirror> along = new ArrayList<>();
    List<Mirror> others = new ArrayList<>();
    // An axis takes the first corner to some corner, and keeps the middle.
    for (int i = 0; i < loop.size(); i++) {
      Point to = loop.edge(i).start();
      Point u = i == 0 ? first.minus(middle) : first.minus(to).left();
      if (u.norm() < 1) {
        continue;
      }
      Mirror mirror = new Mirror(middle, u.unit());
      if (mirror.of(first).distance(to) < SAME && isAxis(mirror)) {
        boolean side =
            ground.axes().stream()
                .anyMatch(a -> Math.abs(a.cross(u.unit()) * a.dot(u.unit())) < ALONG);
        (side ? along : others).add(mirror);
      }
    }
    along.addAll(others);
    return along;
  }

  /** A point that a mirror image of the loop has at the mirror image of the place. */
  private static Point middle(Loop loop) {
    Point sum = new Point(0, 0);
    double length = 0;
    for (Edge e : loop.edges()) {
      sum = sum.plus(e.at(0.5).times(e.length()));
      length += e.length();
    }
    return sum.times(1 / length);
  }

  private boolean isAxis(Mirror mirror) {
    List<Edge> joints = locked.stream().map(Laid::path).toList();
    List<Edge> zones =
        ground.zones().rings().stream().map(Ring::edges).flatMap(List::stream).toList();
    return areEven(mirror, sides(), (a, b) -> isSame(a.edge(), b.edge()) && a.is(b.against()))
        && areEven(mirror, plain(joints), (a, b) -> isSame(a.edge(), b.edge()))
        && areEven(mirror, plain(zones), (a, b) -> isSame(a.edge(), b.edge()))
        && seen.stream()
            .allMatch(p -> seen.stream().anyMatch(q -> mirror.of(p).distance(q) < SAME));
  }

  /**
   * An edge and what it is against.
   *
   * @param edge on the bench
   * @param against open ground where nothing is known
   */
  private record Side(Edge edge, Against against) {
    boolean is(Against other) {
      return against == other;
    }
  }

  private static List<Side> plain(List<Edge> edges) {
    return edges.stream().map(e -> new Side(e, Against.OPEN)).toList();
  }

  private List<Side> sides() {
    List<Side> found = new ArrayList<>();
    for (Loop loop : ground.loops()) {
      for (int i = 0; i < loop.size(); i++) {
        found.add(new Side(loop.edge(i), against(ground.source(loop.tag(i)))));
      }
    }
    return found;
  }

  private Against against(Source source) {
    return source instanceof Source.OnOutline on ? slab.edge(on.edge()).against() : Against.OPEN;
  }

  private static boolean areEven(Mirror mirror, List<Side> sides, BiPredicate<Side, Side> isSame) {
    return sides.stream()
        .map(s -> new Side(mirror.of(s.edge()), s.against()))
        .allMatch(s -> sides.stream().anyMatch(o -> isSame.test(s, o)));
  }

  /** Whether two edges are one, whichever way they run. */
  private static boolean isSame(Edge a, Edge b) {
    return a.at(0.5).distance(b.at(0.5)) < SAME
        && ((a.start().distance(b.start()) < SAME && a.end().distance(b.end()) < SAME)
            || (a.start().distance(b.end()) < SAME && a.end().distance(b.start()) < SAME));
  }

  /** Whether all joints of a draft have a joint at their mirror image, to an inch. */
  static boolean isEven(Draft draft, Mirror mirror) {
    return draft.lines().stream()
        .map(l -> mirror.of(l.path()))
        .allMatch(e -> isCovered(e, draft.lines()));
  }

  private static boolean isCovered(Edge image, List<Laid> lines) {
    for (double share = 0; share <= 1; share += 0.25) {
      Point p = image.at(share);
      if (lines.stream().noneMatch(l -> l.path().distance(p) <= MARK)) {
        return false;
      }
    }
    return true;
  }
}
