package org.jointwright.plan.edit;

import java.util.List;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** The joint that cuts the tip off a corner of a slab's outline. */
final class CornerJoint {
  /** Nearer to an edge than this a joint ends on it, inches: the rules' length tolerance. */
  private static final double ON_EDGE = 0.5;

  private CornerJoint() {}

  /** The plan with that corner joint, locked, in place of any other across the same corner. */
  static Plan across(Plan plan, String slabId, int corner, double legs) {
    Slab slab = Rings.slab(plan, slabId);
    List<Edge> edges = slab.outline().ring().edges();
    int n = edges.size();
    if (corner < 0 || corner >= n) {
      throw new IllegalArgumentException("no corner has the number " + corner);
    }
    Edge after = edges.get(corner);
    Edge before = edges.get((corner + n - 1) % n);
    if (!(legs > 0 && legs < after.length() && legs < before.length())) {
      throw new IllegalArgumentException("no corner joint has legs of " + legs + " in there");
    }
    Point from = before.at(1 - legs / before.length());
    Point to = after.at(legs / after.length());
    Joint joint = Joint.of("J1", JointKind.CONTRACTION, Path.straight(from, to), Purpose.CORNER);
    List<Joint> others = slab.joints().stream().filter(j -> !isAcross(j, before, after)).toList();
    return new JointEdit.Add(slabId, joint)
        .applyTo(plan.withSlab(slabId, s -> s.withLaid(others, s.boxOuts())));
  }

  /** Whether a joint cuts off the same tip: from the one edge to the other. */
  private static boolean isAcross(Joint j, Edge before, Edge after) {
    if (j.purpose() != Purpose.CORNER) {
      return false;
    }
    Point a = j.path().start();
    Point b = j.path().end();
    return (before.distance(a) < ON_EDGE && after.distance(b) < ON_EDGE)
        || (after.distance(a) < ON_EDGE && before.distance(b) < ON_EDGE);
  }
}
