package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Works out where strands run now: those first of which both ends are known, then those with one
 * known end, then those that divide what lies between; last the places where strands only end.
 */
final class Solver {
  /** Arcs of openings and box-outs up to this radius carry the ends on them along, inches. */
  private static final double SMALL_ARC = 60;

  /** An end this near to a place that people see meets it, inches: as the engine counts it. */
  private static final double MEETS = 0.95;

  private static final double ON = 0.05;

  private final List<Stretch> stretches;
  private final List<Node> nodes;
  private final List<Strand> strands;
  private final Anchors anchors;
  private final Lines lines;
  private boolean broken;

  Solver(Rims rims, List<Node> nodes, List<Strand> strands, Marks marks) {
    this.stretches = rims.stretches();
    this.nodes = nodes;
    this.strands = strands;
    this.anchors = new Anchors(stretches, marks, nodes);
    this.lines = new Lines(stretches, anchors, marks);
  }

  /**
   * Whether every strand and place could be worked out.
   *
   * @param targetsBefore places on the edges that joints like to meet, as they were
   * @param targetsNow the same as they are, in the same order
   */
  boolean solve(List<Point> targetsBefore, List<Point> targetsNow) {
    pinCorners();
    if (targetsBefore.size() == targetsNow.size()) {
      for (int i = 0; i < targetsBefore.size(); i++) {
        pin(targetsBefore.get(i), targetsNow.get(i));
      }
    }
    strands.forEach(this::hold);
    Rounds rounds = new Rounds(stretches);
    for (Strand s : strands) {
      if (s.isRound() && !s.isSolved()) {
        s.lay(rounds.now(s));
      }
    }
    strands.forEach(this::settle);
    boolean going = true;
    while (going && !broken) {
      anchors.update();
      going = layAll(2) || layAll(1) || layAll(0) || free();
    }
    return !broken
        && strands.stream().allMatch(Strand::isSolved)
        && nodes.stream().allMatch(n -> n.now() != null || isHeldOnly(n));
  }

  /** Whether only joints of the user's end at a place: it is where they say. */
  private static boolean isHeldOnly(Node node) {
    return node.ending().stream()
        .allMatch(s -> s.tracks().stream().allMatch(t -> t.held().isPresent()));
  }

  private void pinCorners() {
    for (Node n : nodes) {
      if (!n.isOnRim()) {
        continue;
      }
      Stretch s = stretches.get(n.stretch());
      if (n.along() < Turns.AT_CORNER) {
        n.settle(s.firstCorner());
      } else if (s.lengthBefore() - n.along() < Turns.AT_CORNER) {
        n.settle(s.lastCorner());
      } else if (s.inner()
          && s.before().size() == 1
          && s.before().getFirst() instanceof Arc a
          && a.radius() <= SMALL_ARC) {
        n.settle(s.at(n.along() / s.lengthBefore() * s.length()));
      }
    }
  }

  /** Moves ends that met a place that people see with it, along the edge they stand on. */
  private void pin(Point before, Point now) {
    for (Node n : nodes) {
      if (n.isOnRim() && n.now() == null && n.before().distance(before) <= MEETS) {
        Stretch s = stretches.get(n.stretch());
        n.settle(s.at(s.alongNow(n.before().plus(now.minus(before)))));
      }
    }
  }

  /** Lays a strand along the joint in it that the user holds. */
  private void hold(Strand strand) {
    for (Track t : strand.tracks()) {
      if (t.held().isPresent()) {
        Edge held = t.held().get();
        strand.lay(held.equals(t.edge()) ? strand.before() : Carriers.of(held));
        return;
      }
    }
  }

  private boolean layAll(int known) {
    List<Strand> ready = new ArrayList<>();
    for (Strand s : strands) {
      if (!s.isSolved() && isReady(s, known)) {
        ready.add(s);
      }
    }
    for (Strand s : ready) {
      Carrier carrier = lines.lay(s);
      if (carrier == null) {
        broken = true;
        return false;
      }
      s.lay(carrier);
      settle(s);
    }
    return !ready.isEmpty();
  }

  private boolean isReady(Strand s, int known) {
    int ends = (s.start().now() == null ? 0 : 1) + (s.end().now() == null ? 0 : 1);
    return ends >= known && anchors.place(s.start()) != null && anchors.place(s.end()) != null;
  }

  /** Finds the places along a solved strand that it fixes. */
  private void settle(Strand strand) {
    Carrier carrier = strand.now();
    if (carrier == null) {
      return;
    }
    for (Node n : strand.nodes()) {
      locate(n);
      Point p = n.now();
      broken |= p != null && carrier.distance(p) > ON;
    }
    strand.tees().forEach(this::locate);
  }

  private void locate(Node node) {
    if (node.now() != null) {
      return;
    }
    Point by = anchors.place(node);
    Point near = by == null ? node.before() : by;
    List<Strand> solved = new ArrayList<>();
    node.passing().stream().filter(Strand::isSolved).forEach(solved::add);
    node.ending().stream().filter(Strand::isSolved).forEach(solved::add);
    if (node.isOnRim()) {
      for (Strand s : solved) {
        Carrier c = s.now();
        Point p = c == null ? null : stretches.get(node.stretch()).meets(c, near);
        if (p == null) {
          broken = true;
        } else {
          node.settle(p);
          return;
        }
      }
      return;
    }
    if (solved.size() > 1 && solved.stream().allMatch(s -> s.before().equals(s.now()))) {
      // Where two arcs touch, what rounding leaves of their meeting is nowhere near.
      node.settle(node.before());
      return;
    }
    for (int i = 0; i < solved.size(); i++) {
      for (int k = i + 1; k < solved.size(); k++) {
        Point p = solved.get(i).meets(solved.get(k), near);
        if (p != null) {
          node.settle(p);
          return;
        }
      }
    }
    if (solved.size() == 1 && node.passing().size() == 1 && node.ending().isEmpty()) {
      // Two joints of one strand, one of the user's and one that goes on beyond it.
      Point p = OnStrand.place(solved.getFirst(), node);
      if (p != null) {
        node.settle(p);
      }
    }
  }

  /** Moves a place where strands only end as the far ends of those strands move. */
  private boolean free() {
    for (Node n : nodes) {
      Optional<Point> by = n.now() == null && !n.isOnRim() ? drift(n) : Optional.empty();
      if (by.isPresent()) {
        n.settle(n.before().plus(by.get()));
        return true;
      }
    }
    return false;
  }

  private Optional<Point> drift(Node node) {
    double weight = 0;
    double x = 0;
    double y = 0;
    for (Strand s : node.ending()) {
      Node far = s.start() == node ? s.end() : s.start();
      Point place = anchors.place(far);
      if (place != null) {
        double w = 1 / Math.max(1, s.lengthBefore());
        Point moved = place.minus(far.before());
        weight += w;
        x += w * moved.x();
        y += w * moved.y();
      }
    }
    return weight == 0 ? Optional.empty() : Optional.of(new Point(x / weight, y / weight));
  }
}
