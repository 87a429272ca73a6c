package org.jointwright.joint;

import java.util.List;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Filler;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** How wide filler is where a joint does not say. */
public final class FillerWidth {
  /** A joint this near to an edge runs along it; inches. */
  private static final double ALONG = 0.5;

  private FillerWidth() {}

  /** The width of the filler in an isolation joint of a slab, inches. */
  public static double of(Joint joint, Slab slab) {
    boolean street = isAtStreet(joint.path().middle(), slab);
    Length usual = street ? Filler.WIDTH_AT_STREET.value() : Filler.WIDTH.value();
    return joint.width().orElse(usual).inches();
  }

  private static boolean isAtStreet(Point p, Slab slab) {
    List<Edge> edges = slab.outline().ring().edges();
    for (int i = 0; i < edges.size(); i++) {
      if (slab.edge(i).against() == Against.STREET && edges.get(i).distance(p) < ALONG) {
        return true;
      }
    }
    return false;
  }
}
