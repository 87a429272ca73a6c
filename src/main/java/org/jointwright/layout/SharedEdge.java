package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * A straight stretch of edge that two slabs of a plan share.
 *
 * @param slab the id of the first slab
 * @param edge the number of the first slab's edge
 * @param stretch where they meet, along that edge
 * @param needsIsolation whether either slab says that it is against something that holds it
 */
record SharedEdge(String slab, int edge, Segment stretch, boolean needsIsolation) {
  /** Edges farther apart than this do not meet, inches: the rules' tolerance on lengths. */
  private static final double NEAR = 0.5;

  /** Shorter meetings are corners that touch, inches. */
  private static final double SHORTEST = 6;

  /** The stretches that two slabs share. */
  static List<SharedEdge> between(Slab a, Slab b) {
    List<SharedEdge> found = new ArrayList<>();
    List<Edge> ours = a.outline().ring().edges();
    List<Edge> theirs = b.outline().ring().edges();
    for (int i = 0; i < ours.size(); i++) {
      for (int k = 0; k < theirs.size(); k++) {
        if (ours.get(i) instanceof Segment s && theirs.get(k) instanceof Segment t) {
          boolean isolation = a.edge(i).needsIsolation() || b.edge(k).needsIsolation();
          Segment common = common(s, t);
          if (common.length() >= SHORTEST) {
            found.add(new SharedEdge(a.id(), i, common, isolation));
          }
        }
      }
    }
    return found;
  }

  /** The part of {@code s} along which {@code t} runs; of no length when there is none. */
  static Segment common(Segment s, Segment t) {
    Segment none = new Segment(s.start(), s.start());
    if (s.length() == 0 || t.length() == 0) {
      return none;
    }
    Point u = s.direction(0);
    double a = t.start().minus(s.start()).dot(u);
    double b = t.end().minus(s.start()).dot(u);
    double from = Math.max(0, Math.min(a, b));
    double to = Math.min(s.length(), Math.max(a, b));
    if (to - from <= 0) {
      return none;
    }
    Point p = s.start().plus(u.times(from));
    Point q = s.start().plus(u.times(to));
    return t.distance(p) <= NEAR && t.distance(q) <= NEAR ? new Segment(p, q) : none;
  }
}
