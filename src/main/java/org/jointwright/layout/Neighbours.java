package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Meeting;
import org.jointwright.layout.search.Score;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** What the slabs laid before ask of one that meets them without filler between (S7). */
record Neighbours(Plan plan, Slab slab, List<Slab> laid) {
  private static final double NEAR = 0.5;

  /** Ends this near to the end of the shared stretch need not be met, inches. */
  private static final double FROM_END = 1;

  /** For each neighbour already laid, the stretches shared with it and its joints' ends there. */
  List<Score.Meeting> meetings(Bench bench) {
    List<Score.Meeting> found = new ArrayList<>();
    List<Meeting> all = Meeting.of(plan);
    for (Slab other : laid) {
      List<Edge> stretches = new ArrayList<>();
      for (Meeting m : all) {
        boolean ours = m.first().equals(slab.id()) || m.second().equals(slab.id());
        boolean theirs = m.first().equals(other.id()) || m.second().equals(other.id());
        if (ours && theirs && !m.needsIsolation(plan)) {
          stretches.add(m.stretch());
        }
      }
      List<Point> ends = ends(other, stretches);
      if (!stretches.isEmpty()) {
        found.add(
            new Score.Meeting(
                stretches.stream().map(bench::in).toList(), ends.stream().map(bench::in).toList()));
      }
    }
    return found;
  }

  private static List<Point> ends(Slab other, List<Edge> stretches) {
    List<Point> found = new ArrayList<>();
    for (Joint j : other.joints()) {
      if (j.kind() == JointKind.ISOLATION || j.path().isClosed()) {
        continue;
      }
      for (Point p : List.of(j.path().start(), j.path().end())) {
        boolean on =
            stretches.stream()
                .anyMatch(
                    s ->
                        s.distance(p) < NEAR
                            && s.start().distance(p) > FROM_END
                            && s.end().distance(p) > FROM_END);
        if (on) {
          found.add(p);
        }
      }
    }
    return found;
  }
}
