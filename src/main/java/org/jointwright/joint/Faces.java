package org.jointwright.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * The faces between pieces of line that meet only at their ends.
 *
 * <p>Each piece is walked both ways. Round a node the walks are sorted by direction; a face keeps
 * to the left and so turns as sharply as it can at each node. Pieces that end in the air, and
 * pieces with the same face on both sides, cut nothing: they are taken out first.
 */
final class Faces {
  /** A piece walked one way; the face lies on its left. */
  private record Walk(int piece, boolean forward, Edge edge) {
    Walk back() {
      return new Walk(piece, !forward, edge.reversed());
    }

    @Override
    public boolean equals(Object o) {
      return o instanceof Walk w && w.piece == piece && w.forward == forward;
    }

    @Override
    public int hashCode() {
      return 2 * piece + (forward ? 1 : 0);
    }
  }

  /** A walk and the direction in which it leaves, worked out once though compared often. */
  private record Headed(Walk walk, double heading) {}

  private final List<Line> pieces;
  private final Set<Integer> idle = new LinkedHashSet<>();

  /** Every closed walk, once nothing is left that cuts nothing. */
  private List<List<Walk>> walked = List.of();

  Faces(List<Line> pieces) {
    this.pieces = pieces;
    dropDangling();
    dropBridges();
  }

  /** The sources of pieces that cut nothing. */
  Set<Source> idleSources() {
    Set<Source> sources = new LinkedHashSet<>();
    idle.forEach(i -> sources.add(pieces.get(i).source()));
    return sources;
  }

  /** Every closed walk, its face on the left: faces counter-clockwise, rims of holes clockwise. */
  List<List<Side>> rings() {
    return walked.stream()
        .map(
            ring ->
                ring.stream().map(w -> new Side(w.edge(), pieces.get(w.piece()).source())).toList())
        .toList();
  }

  private void dropDangling() {
    Map<Point, List<Integer>> at = new HashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      at.computeIfAbsent(pieces.get(i).edge().start(), k -> new ArrayList<>()).add(i);
      at.computeIfAbsent(pieces.get(i).edge().end(), k -> new ArrayList<>()).add(i);
    }
    List<Point> ends = new ArrayList<>(at.keySet());
    while (!ends.isEmpty()) {
      Point p = ends.removeLast();
      List<Integer> here = at.getOrDefault(p, List.of());
      if (here.size() == 1) {
        int piece = here.getFirst();
        idle.add(piece);
        Edge e = pieces.get(piece).edge();
        for (Point end : List.of(e.start(), e.end())) {
          at.getOrDefault(end, new ArrayList<>()).remove(Integer.valueOf(piece));
          ends.add(end);
        }
      }
    }
  }

  private void dropBridges() {
    boolean again = true;
    while (again) {
      int before = idle.size();
      walked = walks();
      for (List<Walk> ring : walked) {
        Set<Walk> in = new HashSet<>(ring);
        ring.stream().filter(w -> in.contains(w.back())).forEach(w -> idle.add(w.piece()));
      }
      again = idle.size() > before;
    }
  }

  private List<List<Walk>> walks() {
    Map<Point, List<Walk>> leaving = new LinkedHashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (!idle.contains(i)) {
        Walk w = new Walk(i, true, pieces.get(i).edge());
        leaving.computeIfAbsent(w.edge().start(), k -> new ArrayList<>()).add(w);
        leaving.computeIfAbsent(w.edge().end(), k -> new ArrayList<>()).add(w.back());
      }
    }
    Map<Walk, Walk> next = new HashMap<>();
    for (List<Walk> round : leaving.values()) {
      List<Headed> headed = new ArrayList<>(round.size());
      round.forEach(w -> headed.add(new Headed(w, heading(w))));
      headed.sort(Comparator.comparingDouble(Headed::heading));
      for (int i = 0; i < round.size(); i++) {
        round.set(i, headed.get(i).walk());
      }
      for (int i = 0; i < round.size(); i++) {
        // Arriving against walk i, the face on the left goes on along the walk clockwise of it.
        next.put(round.get(i).back(), round.get((i + round.size() - 1) % round.size()));
      }
    }
    List<List<Walk>> rings = new ArrayList<>();
    Set<Walk> done = new HashSet<>();
    for (List<Walk> round : leaving.values()) {
      for (Walk first : round) {
        if (done.contains(first)) {
          continue;
        }
        List<Walk> ring = new ArrayList<>();
        for (Walk w = first; done.add(w); w = java.util.Objects.requireNonNull(next.get(w))) {
          ring.add(w);
        }
        rings.add(ring);
      }
    }
    return rings;
  }

  /** The direction in which a walk leaves, taken a little way along it so that arcs differ. */
  private static double heading(Walk w) {
    double step = Math.min(1, 0.25 * w.edge().length());
    return w.edge().at(step / w.edge().length()).minus(w.edge().start()).angle();
  }
}
