package org.jointwright.layout.keep;

import java.util.List;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;

/**
 * What a pattern is kept from and what it is fitted to.
 *
 * @param before the slab with the joints and box-outs of its layout
 * @param now the slab as it is, with what its user locked
 * @param boxes its box-outs as they are now
 * @param targetsBefore places on the edges that joints like to meet, as they were: neighbours'
 *     joints, ends of features, joints that are there already
 * @param targetsNow the same as they are, in the same order
 * @param metric whether marks stand at whole 10 mm rather than whole inches
 * @param marked whether ends that stood at whole inches are brought to such again; else they stand
 *     where they divide best
 */
public record Asked(
    Slab before,
    Slab now,
    List<BoxOut> boxes,
    List<Point> targetsBefore,
    List<Point> targetsNow,
    boolean metric,
    boolean marked) {
  /** Copies the lists. */
  public Asked {
    boxes = List.copyOf(boxes);
    targetsBefore = List.copyOf(targetsBefore);
    targetsNow = List.copyOf(targetsNow);
  }
}
