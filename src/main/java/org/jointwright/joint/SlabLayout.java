package org.jointwright.joint;

import java.util.List;
import org.jointwright.measure.Area;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;

/**
 * A slab, its box-outs and joints, and the panels they cut.
 *
 * @param slab the slab, holding the same joints and box-outs
 * @param panels the faces, in a fixed order: from below upwards, then from left to right
 * @param loose joints with an end or a piece that cuts nothing
 */
public record SlabLayout(Slab slab, List<Panel> panels, List<Joint> loose) {
  /** Copies the lists. */
  public SlabLayout {
    panels = List.copyOf(panels);
    loose = List.copyOf(loose);
  }

  /** Its concrete seen from above: the panels, without openings and box-outs. */
  public Area concrete() {
    return new Area(panels.stream().mapToDouble(Panel::area).sum());
  }

  /** The slab's joints. */
  public List<Joint> joints() {
    return slab.joints();
  }

  /** The slab's box-outs. */
  public List<BoxOut> boxOuts() {
    return slab.boxOuts();
  }
}
