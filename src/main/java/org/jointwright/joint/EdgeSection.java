package org.jointwright.joint;

import org.jointwright.measure.Length;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Section;

/** What a thickened edge measures, also where the plan does not say. */
public final class EdgeSection {
  private EdgeSection() {}

  /** How thick a slab is at an edge that is thickened. */
  public static Length depth(Thickened edge, Slab slab) {
    return edge.depth().orElse(Section.thickenedEdge(slab.thickness()));
  }

  /** How far from the edge the slab comes back to its thickness. */
  public static Length over(Thickened edge) {
    return edge.over().orElse(Section.THICKENED_TAPER.value());
  }
}
