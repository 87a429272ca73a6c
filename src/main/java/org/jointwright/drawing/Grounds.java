package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** What stands beside the slabs: a band of building, street or concrete along each such edge. */
final class Grounds {
  private Grounds() {}

  static List<Mark> of(Plan plan, View view, Pens pens) {
    List<Mark> marks = new ArrayList<>();
    List<Stretch> all = plan.slabs().stream().flatMap(s -> stretches(s).stream()).toList();
    double[] depths = depths(all, view, pens);
    for (int i = 0; i < all.size(); i++) {
      marks.add(band(view.on(all.get(i).path()), depths[i], all.get(i).role()));
    }
    for (Slab slab : plan.slabs()) {
      for (Opening o : slab.openings()) {
        if (o.edges().values().stream().anyMatch(e -> e.against() == Against.BUILDING)) {
          marks.add(Mark.Area.of(view.on(o.outline().ring()), Role.BUILDING));
        }
      }
    }
    return marks;
  }

  static List<Mark> walls(Plan plan, View view, Pens pens) {
    List<Mark> marks = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      for (Stretch s : stretches(slab)) {
        marks.add(Mark.Line.of(view.on(s.path()), pens.thin(), Role.WALL));
      }
    }
    return marks;
  }

  private static double depth(Path path, Pens pens) {
    return Math.min(pens.band(), Math.max(pens.fillerLeast() * 3, path.length() / 2));
  }

  /**
   * How deep each band is. Along one house bands run on from slab to slab: those that begin where
   * another ends are as deep as the deepest of them.
   */
  private static double[] depths(List<Stretch> all, View view, Pens pens) {
    double[] depths = all.stream().mapToDouble(s -> depth(view.on(s.path()), pens)).toArray();
    boolean isDeeper = true;
    while (isDeeper) {
      isDeeper = false;
      for (int i = 0; i < depths.length; i++) {
        for (int k = 0; k < depths.length; k++) {
          if (depths[k] > depths[i] && all.get(i).runsOnTo(all.get(k))) {
            depths[i] = depths[k];
            isDeeper = true;
          }
        }
      }
    }
    return depths;
  }

  /** A run of edges against the same. */
  private record Stretch(Path path, Role role) {
    /** Whether one begins where the other ends. */
    boolean runsOnTo(Stretch o) {
      return role == o.role
          && (path.start().distance(o.path.end()) <= Lettering.SAME_PLACE
              || path.end().distance(o.path.start()) <= Lettering.SAME_PLACE);
    }
  }

  private static List<Stretch> stretches(Slab slab) {
    List<Stretch> out = new ArrayList<>();
    Ring ring = slab.outline().ring();
    int n = ring.edges().size();
    Map<Integer, EdgeSetting> edges = slab.edges();
    int first = 0;
    while (first < n && of(edges, first) == of(edges, Math.floorMod(first - 1, n))) {
      first++;
    }
    List<Edge> run = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      int i = (first + k) % n;
      Against now = of(edges, i);
      run.add(ring.edges().get(i));
      boolean last = k == n - 1 || of(edges, (i + 1) % n) != now;
      if (last) {
        role(now, new Path(run), out);
        run = new ArrayList<>();
      }
    }
    return out;
  }

  private static void role(Against against, Path path, List<Stretch> out) {
    switch (against) {
      case OPEN -> {}
      case BUILDING -> out.add(new Stretch(path, Role.BUILDING));
      case CONCRETE, STREET, ASPHALT -> out.add(new Stretch(path, Role.STREET));
    }
  }

  private static Against of(Map<Integer, EdgeSetting> edges, int i) {
    return edges.getOrDefault(i, EdgeSetting.OPEN).against();
  }

  /** The band on the far side from the slab: the plan's right, so the medium's left. */
  private static Mark band(Path path, double depth, Role role) {
    List<Edge> far = Offsets.of(path, depth);
    List<Edge> ring = new ArrayList<>(path.edges());
    ring.add(new Segment(path.end(), far.getLast().end()));
    far.reversed().forEach(e -> ring.add(e.reversed()));
    ring.add(new Segment(far.getFirst().start(), path.start()));
    return Mark.Area.of(new Ring(ring), role);
  }
}
