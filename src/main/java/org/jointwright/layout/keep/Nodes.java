package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.shape.Point;

/** The places where joints end, each once. */
final class Nodes {
  /** Ends this near to each other are one, inches. */
  private static final double SAME = 0.02;

  private final Rims rims;
  private final Map<Long, List<Node>> cells = new HashMap<>();
  private final List<Node> all = new ArrayList<>();

  Nodes(Rims rims) {
    this.rims = rims;
  }

  List<Node> all() {
    return all;
  }

  /** The place at {@code p}, made when it is asked for first. */
  Node at(Point p) {
    long cx = (long) Math.floor(p.x() / SAME);
    long cy = (long) Math.floor(p.y() / SAME);
    for (long x = cx - 1; x <= cx + 1; x++) {
      for (long y = cy - 1; y <= cy + 1; y++) {
        for (Node n : cells.getOrDefault(key(x, y), List.of())) {
          if (n.before().distance(p) <= SAME) {
            return n;
          }
        }
      }
    }
    int stretch = rims.holding(p);
    double along = stretch < 0 ? 0 : rims.stretches().get(stretch).alongBefore(p);
    Node made = new Node(p, stretch, along);
    cells.computeIfAbsent(key(cx, cy), k -> new ArrayList<>()).add(made);
    all.add(made);
    return made;
  }

  private static long key(long x, long y) {
    return x * 0x9E3779B97F4A7C15L + y;
  }
}
