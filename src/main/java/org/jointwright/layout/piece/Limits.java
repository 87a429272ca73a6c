package org.jointwright.layout.piece;

import org.jointwright.plan.Slab;
import org.jointwright.practice.PanelShape;
import org.jointwright.practice.Spacing;
import org.jointwright.shape.jts.InscribedCircle;

/**
 * What a slab's panels must keep to, inches and ratios.
 *
 * @param spacing the longest side
 * @param aspect the longest side over the shortest
 * @param narrowest the least width
 */
public record Limits(double spacing, double aspect, double narrowest) {
  /** How far past a limit still counts as met: a shade inside the checks' half inch. */
  public static final double SHADE = 0.42;

  /** The same for an aspect, a shade inside the checks' hundredth. */
  public static final double ASPECT_SHADE = 0.008;

  /** How much longer a panel with an arc of the slab's edge may be: its bow is not its span. */
  public static final double BOW = PanelShape.BOW.value();

  /** The limits in force for a slab. */
  public static Limits of(Slab slab) {
    double width =
        Spacing.needsWidth(slab.jointing()) ? InscribedCircle.of(slab.region()).diameter() : 0;
    return new Limits(
        Spacing.longest(slab.thickness(), slab.jointing(), width).inches(),
        PanelShape.aspect(slab.jointing()),
        PanelShape.narrowest(slab.jointing()).inches());
  }
}
