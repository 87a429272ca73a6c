package org.jointwright.practice;

import org.jointwright.measure.Density;

/** What stone for the base weighs, and how much of it is lost. */
public final class BaseStone {
  /** Dense-graded crushed limestone, compacted. */
  public static final Limit<Density> COMPACTED =
      Limit.of(
          new Density(139),
          Cited.secondHand("dense-graded aggregate specification", "", "as quoted"));

  /** Gravel or crushed stone as it lies loose in a truck, dry: 2,600 lb/yd³. */
  public static final Limit<Density> LOOSE =
      Limit.of(
          new Density(2600.0 / 27),
          Cited.read("CalRecycle weights and volumes", "", "gravel or crushed stone, loose dry"));

  /** The share ordered over what is placed. */
  public static final Limit<Double> WASTE = Limit.of(0.05, Cited.practice());

  private BaseStone() {}
}
