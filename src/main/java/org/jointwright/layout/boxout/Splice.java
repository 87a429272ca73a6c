package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.boxout.Chains.Chain;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.layout.piece.Loop;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Takes a box-out away from a slab's loops: a hole inside, a notch where it reaches an edge. */
public final class Splice {
  private Splice() {}

  /** Nearer than this to an edge is on it, inches. */
  private static final double ON = 0.05;

  /** Cuts {@code box}, clockwise, out of {@code loops}; changes the list. */
  public static void cutOut(List<Loop> loops, Loop box) {
    List<Chain> runs = freeRuns(loops, box);
    if (!runs.isEmpty()) {
      List<Loop> cut = alongEdges(loops, box, runs);
      if (!cut.isEmpty()) {
        loops.clear();
        loops.addAll(cut);
        return;
      }
    }
    for (int l = 0; l < loops.size(); l++) {
      List<Place> places = places(loops.get(l), box);
      if (places.size() == 2) {
        loops.set(l, notched(loops.get(l), box, places));
        return;
      }
    }
    loops.add(box);
  }

  /**
   * The loops that are parts of the ground, each followed by the holes in it: a box-out from edge
   * to edge parts the slab.
   */
  public static List<List<Loop>> parts(List<Loop> loops) {
    List<List<Loop>> parts = new ArrayList<>();
    for (Loop l : loops) {
      if (Chains.area(l) > 0) {
        parts.add(new ArrayList<>(List.of(l)));
      }
    }
    for (Loop l : loops) {
      if (Chains.area(l) <= 0) {
        Point p = l.edge(0).start();
        for (List<Loop> part : parts) {
          if (parts.size() == 1 || new Ring(part.getFirst().edges()).contains(p)) {
            part.add(l);
            break;
          }
        }
      }
    }
    return parts;
  }

  /** A crossing of the two loops. */
  private record Place(int edge, double share, int boxEdge, double boxShare) {}

  private static boolean isOn(List<Loop> loops, Edge side) {
    for (Loop loop : loops) {
      for (Edge e : loop.edges()) {
        if (e.distance(side.start()) < ON
            && e.distance(side.end()) < ON
            && e.distance(side.at(0.5)) < ON) {
          return true;
        }
      }
    }
    return false;
  }

  /** The sides of a box amid the ground, in runs; none where no side of it lies on a loop. */
  private static List<Chain> freeRuns(List<Loop> loops, Loop box) {
    List<Chain> runs = new ArrayList<>();
    int n = box.size();
    for (int k = 0; k < n; k++) {
      if (isOn(loops, box.edge(k - 1)) && !isOn(loops, box.edge(k))) {
        int last = k;
        while (!isOn(loops, box.edge(last + 1))) {
          last++;
        }
        runs.add(Chains.stretch(box.edges(), box.tags(), k, last + 1));
      }
    }
    return runs;
  }

  /** The loops with a detour round a box some of whose sides lie on them. */
  private static List<Loop> alongEdges(List<Loop> loops, Loop box, List<Chain> runs) {
    List<Chain> chains = new ArrayList<>(runs);
    List<Loop> whole = new ArrayList<>();
    for (Loop loop : loops) {
      List<Double> places = new ArrayList<>();
      for (Chain run : runs) {
        for (Point p : List.of(run.start(), run.end())) {
          Place foot = foot(loop, p);
          if (loop.edge(foot.edge()).distance(p) < ON) {
            places.add(foot.edge() + foot.share());
          }
        }
      }
      places.sort(null);
      if (places.size() < 2) {
        whole.add(loop);
        continue;
      }
      for (int i = 0; i < places.size(); i++) {
        Chain c =
            Chains.stretch(
                loop.edges(), loop.tags(), places.get(i), places.get((i + 1) % places.size()));
        if (!c.edges().isEmpty() && !liesOn(box, c)) {
          chains.add(c);
        }
      }
    }
    List<Loop> found = Chains.closed(chains);
    if (found.isEmpty()) {
      return found;
    }
    List<Loop> all = new ArrayList<>(found);
    all.addAll(whole);
    // What bounds the ground comes before its holes.
    all.sort(java.util.Comparator.comparing(l -> Chains.area(l) <= 0));
    return all;
  }

  private static boolean liesOn(Loop box, Chain chain) {
    return chain.edges().stream()
        .allMatch(e -> box.distance(e.at(0.5)) < ON || box.distance(e.at(0.3)) < ON);
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
    double left = Chains.area(loop) + Chains.area(box);
    return Math.abs(Chains.area(one) - left) < Math.abs(Chains.area(other) - left) ? one : other;
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
        edges.add(edges.isEmpty() ? part : Chains.begun(part, edges.getLast().end()));
        tags.add(loop.tag(k));
      }
      if (here) {
        return;
      }
      k = (k + 1) % n;
      at = 0;
    }
  }
}
