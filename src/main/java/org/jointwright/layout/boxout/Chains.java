package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Loop;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Stretches of edges that are put together end to start until they close. */
final class Chains {
  /** Ends nearer to a start than this are meant to be it, inches. */
  private static final double NEAR = 0.2;

  private Chains() {}

  /**
   * A stretch.
   *
   * @param edges one after the other, one at least
   * @param tags what each runs along
   */
  record Chain(List<Edge> edges, List<Integer> tags) {
    Chain {
      edges = List.copyOf(edges);
      tags = List.copyOf(tags);
    }

    Point start() {
      return edges.getFirst().start();
    }

    Point end() {
      return edges.getLast().end();
    }
  }

  /**
   * The stretch of a ring from one place on to another, a place being an edge and a share of it.
   */
  static Chain stretch(List<Edge> ring, List<Integer> tags, double from, double to) {
    int n = ring.size();
    List<Edge> edges = new ArrayList<>();
    List<Integer> own = new ArrayList<>();
    double end = to > from ? to : to + n;
    for (int i = (int) Math.floor(from); i < end; i++) {
      Edge e = ring.get(i % n);
      double a = Math.max(0, from - i);
      double b = Math.min(1, end - i);
      if ((b - a) * e.length() > 1e-6) {
        edges.add(a == 0 && b == 1 ? e : e.part(a, b));
        own.add(tags.get(i % n));
      }
    }
    return new Chain(edges, own);
  }

  /** The closed loops that the chains make; none where some are left over. */
  static List<Loop> closed(List<Chain> chains) {
    List<Chain> left = new ArrayList<>(chains);
    List<Loop> loops = new ArrayList<>();
    while (!left.isEmpty()) {
      Chain first = left.removeFirst();
      List<Edge> edges = new ArrayList<>(first.edges());
      List<Integer> tags = new ArrayList<>(first.tags());
      while (edges.getLast().end().distance(edges.getFirst().start()) > NEAR || edges.size() < 2) {
        Point end = edges.getLast().end();
        Chain next = null;
        for (Chain c : left) {
          boolean near = c.start().distance(end) <= NEAR;
          if (near && (next == null || c.start().distance(end) < next.start().distance(end))) {
            next = c;
          }
        }
        if (next == null) {
          return List.of();
        }
        left.remove(next);
        edges.add(begun(next.edges().getFirst(), end));
        edges.addAll(next.edges().subList(1, next.edges().size()));
        tags.addAll(next.tags());
      }
      edges.set(edges.size() - 1, ended(edges.getLast(), edges.getFirst().start()));
      loops.add(new Loop(edges, tags));
    }
    return loops;
  }

  /** The edge from elsewhere, so that rounding leaves no gap. */
  static Edge begun(Edge edge, Point start) {
    if (edge.start().equals(start)) {
      return edge;
    }
    return switch (edge) {
      case Segment s -> new Segment(start, s.end());
      case Arc a -> new Arc(start, a.end(), a.centre(), a.sweep());
    };
  }

  /** The edge to elsewhere. */
  static Edge ended(Edge edge, Point end) {
    if (edge.end().equals(end)) {
      return edge;
    }
    return switch (edge) {
      case Segment s -> new Segment(s.start(), end);
      case Arc a -> new Arc(a.start(), end, a.centre(), a.sweep());
    };
  }

  /** Twice the area that a loop goes round, counter-clockwise counted as more than nothing. */
  static double area(Loop loop) {
    double sum = 0;
    for (Edge e : loop.edges()) {
      sum += e.start().cross(e.end());
      if (e instanceof Arc a) {
        sum += a.radius() * a.radius() * (a.sweep() - Math.sin(a.sweep()));
      }
    }
    return sum;
  }
}
