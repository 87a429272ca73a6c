package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.joint.Cutout;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** The stretches of a path that lie off the concrete by more than the tolerance. */
public final class Outside {
  private final Concrete concrete;
  private final boolean throughCutouts;
  private final List<Edge> edges;

  /**
   * Ready to look at paths.
   *
   * @param concrete where there is concrete
   * @param throughCutouts whether a path may run through what is left out round fixed objects
   */
  public Outside(Concrete concrete, boolean throughCutouts) {
    this.concrete = concrete;
    this.throughCutouts = throughCutouts;
    edges = throughCutouts ? concrete.edges() : concrete.edgesAndCutouts();
  }

  /** The stretches of a path. */
  public List<Stretch> of(Path path) {
    List<Stretch> found = new ArrayList<>();
    for (Edge e : path.edges()) {
      // In or out changes only where the edge crosses a line: most parts need one look.
      TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
      for (Edge line : edges) {
        Crossing.of(e, line).forEach(c -> cuts.add(c.first()));
      }
      double from = 0;
      for (double to : cuts.tailSet(0.0, false)) {
        if (!isAmid(e.at((from + to) / 2))) {
          Edge part = from == 0 && to == 1 ? e : e.part(from, to);
          found.addAll(Stretches.of(part, p -> !reaches(p)));
        }
        from = to;
      }
    }
    return found;
  }

  private boolean isAmid(Point p) {
    return concrete.region().contains(p)
        && (throughCutouts
            || concrete.cutouts().stream().map(Cutout::ring).noneMatch(r -> r.contains(p)));
  }

  private boolean reaches(Point p) {
    return throughCutouts ? concrete.reaches(p) : concrete.reachesOutsideCutouts(p);
  }
}
