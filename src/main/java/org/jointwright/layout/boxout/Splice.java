package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.layout.piece.Loop;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Segment;

/** Takes a box-out away from a slab's loops: a hole inside, a notch where it reaches an edge. */
public final class Splice {
  private Splice() {}

  /** Cuts {@code box}, clockwise, out of {@code loops}; changes the list. */
  public static void cutOut(List<Loop> loops, Loop box) {
    for (int l = 0; l < loops.size(); l++) {
      List<Place> based = based(loops.get(l), box);
      if (!based.isEmpty()) {
        loops.set(l, notched(loops.get(l), box, based));
        return;
      }
      List<Place> places = places(loops.get(l), box);
      if (places.size() == 2) {
        loops.set(l, notched(loops.get(l), box, places));
        return;
      }
    }
    loops.add(box);
  }

  /** A crossing of the two loops. */
  private record Place(int edge, double share, int boxEdge, double boxShare) {}

  /** The ends of a side of the box that lies on an edge of the loop. */
  private static List<Place> based(Loop loop, Loop box) {
    for (int i = 0; i < loop.size(); i++) {
      Edge edge = loop.edge(i);
      for (int k = 0; k < box.size(); k++) {
        Edge side = box.edge(k);
        boolean on =
            edge.distance(side.start()) < 0.05
                && edge.distance(side.end()) < 0.05
                && edge.distance(side.at(0.5)) < 0.05;
        if (on) {
          Place a = new Place(i, edge.nearest(side.start()), k, 0);
          Place b = new Place(i, edge.nearest(side.end()), (k + 1) % box.size(), 0);
          return List.of(a, b);
        }
      }
    }
    return List.of();
  }

  private static List<Place> places(Loop loop, Loop box) {
    List<Place> found = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      for (int k = 0; k < box.size(); k++) {
        Edge side = box.edge(k);
        for (var c : Carriers.of(side).crossings(loop.edge(i))) {
          var p = loop.edge(i).at(c.share());
          double share = side.nearest(p);
          if (side.at(share).distance(p) < 0.05 && share < 1 && c.share() < 1) {
            found.add(new Place(i, c.share(), k, share));
          }
        }
      }
    }
    return found;
  }

  private static Loop notched(Loop loop, Loop box, List<Place> places) {
    // One way round is the slab without the box, the other the box alone or nearly nothing.
    Loop one = joined(loop, box, places.get(0), places.get(1));
    Loop other = joined(loop, box, places.get(1), places.get(0));
    double left = area(loop) + area(box);
    return Math.abs(area(one) - left) < Math.abs(area(other) - left) ? one : other;
  }

  private static double area(Loop loop) {
    double sum = 0;
    for (Edge e : loop.edges()) {
      sum += e.start().cross(e.end());
      if (e instanceof Arc a) {
        sum += a.radius() * a.radius() * (a.sweep() - Math.sin(a.sweep()));
      }
    }
    return sum;
  }

  /** The loop on from {@code from} to {@code to}, then the box back to {@code from}. */
  private static Loop joined(Loop loop, Loop box, Place from, Place to) {
    List<Edge> edges = new ArrayList<>();
    List<Integer> tags = new ArrayList<>();
    walk(loop, from.edge(), from.share(), to.edge(), to.share(), edges, tags);
    walk(box, to.boxEdge(), to.boxShare(), from.boxEdge(), from.boxShare(), edges, tags);
    return new Loop(edges, tags);
  }

  private static void walk(
      Loop loop,
      int from,
      double share,
      int to,
      double last,
      List<Edge> edges,
      List<Integer> tags) {
    int n = loop.size();
    int k = from;
    double at = share;
    for (int guard = 0; guard <= n; guard++) {
      boolean here = k == to && (last > at || guard > 0);
      double until = here ? last : 1;
      if (until - at > 1e-9) {
        Edge part = at == 0 && until == 1 ? loop.edge(k) : loop.edge(k).part(at, until);
        edges.add(joinedTo(edges, part));
        tags.add(loop.tag(k));
      }
      if (here) {
        return;
      }
      k = (k + 1) % n;
      at = 0;
    }
  }

  /** The edge from where the chain so far ends, so that rounding leaves no gap. */
  private static Edge joinedTo(List<Edge> edges, Edge part) {
    if (edges.isEmpty() || edges.getLast().end().equals(part.start())) {
      return part;
    }
    return switch (part) {
      case Segment s -> new Segment(edges.getLast().end(), s.end());
      case Arc a -> new Arc(edges.getLast().end(), a.end(), a.centre(), a.sweep());
    };
  }
}
