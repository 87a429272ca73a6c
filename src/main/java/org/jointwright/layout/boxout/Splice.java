package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.layout.piece.Loop;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Takes a box-out away from a slab's loops: a hole inside, a notch where it reaches an edge. */
public final class Splice {
  private Splice() {}

  /** Nearer than this to an edge is on it, inches. */
  private static final double ON = 0.05;

  /** Cuts {@code box}, clockwise, out of {@code loops}; changes the list. */
  public static void cutOut(List<Loop> loops, Loop box) {
    for (int l = 0; l < loops.size(); l++) {
      int first = firstFree(loops.get(l), box);
      if (first >= 0) {
        loops.set(l, without(loops.get(l), box, first));
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

  private static boolean isOn(Loop loop, Edge side) {
    for (Edge e : loop.edges()) {
      if (e.distance(side.start()) < ON
          && e.distance(side.end()) < ON
          && e.distance(side.at(0.5)) < ON) {
        return true;
      }
    }
    return false;
  }

  /** The first side of a box after those that lie on the loop; -1 where none does. */
  private static int firstFree(Loop loop, Loop box) {
    for (int k = 0; k < box.size(); k++) {
      if (!isOn(loop, box.edge(k)) && isOn(loop, box.edge(k - 1))) {
        return k;
      }
    }
    return -1;
  }

  /** The loop with a detour round a box that stands on it. */
  private static Loop without(Loop loop, Loop box, int first) {
    int last = first;
    while (!isOn(loop, box.edge(last + 1))) {
      last++;
    }
    List<Edge> edges = new ArrayList<>();
    List<Integer> tags = new ArrayList<>();
    Place from = foot(loop, box.edge(last).end());
    Place to = foot(loop, box.edge(first).start());
    walk(loop, from.edge(), from.share(), to.edge(), to.share(), edges, tags);
    for (int k = first; k <= last; k++) {
      edges.add(joinedTo(edges, box.edge(k)));
      tags.add(box.tag(k));
    }
    edges.set(edges.size() - 1, endedAt(edges.getLast(), edges.getFirst().start()));
    return new Loop(edges, tags);
  }

  private static Place foot(Loop loop, Point p) {
    int best = 0;
    for (int i = 1; i < loop.size(); i++) {
      if (loop.edge(i).distance(p) < loop.edge(best).distance(p) - 1e-6) {
        best = i;
      }
    }
    return new Place(best, loop.edge(best).nearest(p), 0, 0);
  }

  private static Edge endedAt(Edge edge, Point end) {
    return switch (edge) {
      case Segment s -> new Segment(s.start(), end);
      case Arc a -> new Arc(a.start(), end, a.centre(), a.sweep());
    };
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
