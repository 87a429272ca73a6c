package org.jointwright.reason;

import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.check.figure.SlabFigures;

/**
 * What a slab comes to with its joints, or without some of them.
 *
 * @param longest the longest panel's longer side, inches; 0 without panels
 * @param most the longest that a panel may be, inches
 * @param figures its figures
 */
public record Outcome(double longest, double most, SlabFigures figures) {
  static Outcome of(Judged slab) {
    double longest =
        slab.faces().stream().map(Face::measures).mapToDouble(m -> m.longSide()).max().orElse(0);
    return new Outcome(longest, slab.spacing().inches(), SlabFigures.of(slab));
  }
}
