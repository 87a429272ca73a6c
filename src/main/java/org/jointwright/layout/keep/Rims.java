package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The outline, openings and box-outs of a slab, those before matched with those now.
 *
 * @param stretches all of them, box-outs first: what stands at both stands at the box-out
 */
record Rims(List<Stretch> stretches) {
  /** An end this near to a line stands on it, inches. */
  static final double ON = 0.05;

  /** A corner that did not move stands this near to where it was, inches. */
  private static final double SAME = 0.01;

  /** Empty where too little is the same. */
  static Optional<Rims> matching(Slab before, Slab now, List<BoxOut> boxesNow) {
    List<Stretch> found = new ArrayList<>();
    boolean whole = true;
    for (BoxOut b : before.boxOuts()) {
      Optional<BoxOut> other =
          boxesNow.stream().filter(n -> n.fixed().equals(b.fixed())).findFirst();
      // An object that was taken away leaves nothing for its joints to stand on.
      whole &= other.isPresent() && add(found, ring(b), ring(other.get()), /* inner= */ true);
    }
    whole &= before.openings().size() == now.openings().size();
    for (int i = 0; whole && i < before.openings().size(); i++) {
      whole = add(found, ring(before.openings().get(i)), ring(now.openings().get(i)), true);
    }
    whole = whole && add(found, before.outline().ring(), now.outline().ring(), false);
    return whole ? Optional.of(new Rims(List.copyOf(found))) : Optional.empty();
  }

  private static Ring ring(BoxOut box) {
    return box.outline().ring();
  }

  private static Ring ring(Opening opening) {
    return opening.outline().ring();
  }

  private static boolean add(List<Stretch> found, Ring before, Ring now, boolean inner) {
    int[] match = match(before, now);
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < match.length; i++) {
      if (match[i] >= 0) {
        kept.add(i);
      }
    }
    if (kept.size() < 2) {
      return false;
    }
    int round = 0;
    for (int k = 0; k < kept.size(); k++) {
      int from = kept.get(k);
      int to = kept.get((k + 1) % kept.size());
      List<Edge> ahead = run(now, match[from], match[to]);
      round += ahead.size();
      found.add(Stretch.of(run(before, from, to), ahead, inner));
    }
    // Corners that changed places would be walked past more than once.
    return round == now.edges().size();
  }

  /** The number now of each corner before; -1 where it is gone. */
  private static int[] match(Ring before, Ring now) {
    List<Point> old = before.vertices();
    List<Point> others = now.vertices();
    int[] found = new int[old.size()];
    for (int i = 0; i < found.length; i++) {
      found[i] = old.size() == others.size() ? i : same(others, old.get(i));
    }
    return found;
  }

  private static int same(List<Point> points, Point p) {
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).distance(p) <= SAME) {
        return i;
      }
    }
    return -1;
  }

  private static List<Edge> run(Ring ring, int from, int to) {
    List<Edge> edges = new ArrayList<>();
    int n = ring.edges().size();
    int i = from;
    do {
      edges.add(ring.edges().get(i));
      i = (i + 1) % n;
    } while (i != to);
    return edges;
  }

  /** The number of the stretch on which {@code p} stood, or -1. */
  int holding(Point p) {
    int best = -1;
    double least = ON;
    for (int i = 0; i < stretches.size(); i++) {
      double off = stretches.get(i).distanceBefore(p);
      if (off < least - 1e-9) {
        best = i;
        least = off;
      }
    }
    return best;
  }
}
