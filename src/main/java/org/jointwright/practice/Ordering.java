package org.jointwright.practice;

import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeUnit;

/** How much more concrete is ordered than the plan holds, and how it is sold. */
public final class Ordering {
  private static final String CIP_8 = "NRMCA Concrete in Practice 8";
  private static final Cited AS_RESTATED = Cited.secondHand(CIP_8, "", "as restated by a supplier");

  /** How much thicker the slab comes out than planned: the base is never even. */
  public static final Limit<Length> UNEVEN =
      Limit.of(
          Length.inches(1.0 / 8), Cited.read(CIP_8, "", "an error of 1/8 in in a slab of 4 in"));

  /** The share that is lost between the truck and the hardened slab. */
  public static final Limit<Double> LOSS =
      Limit.of(0.02, Cited.read(CIP_8, "", "fresh against hardened volume"));

  /** The least share ordered over what the plan holds. */
  public static final Limit<Double> LEAST = Limit.of(0.04, AS_RESTATED);

  /** Plants sell by the quarter yard. */
  public static final Limit<Volume> SOLD_BY = Limit.of(Volume.cubicYards(0.25), Cited.practice());

  /** What a truck brings at most; 8 to 10 yd³ are usual. */
  public static final Limit<Volume> LOAD =
      Limit.of(Volume.cubicYards(10), Cited.read("truck suppliers’ pages", "", "typical loads"));

  /** The same where concrete is sold by the cubic metre: as much to 2 percent. */
  public static final Limit<Volume> METRIC_LOAD =
      Limit.of(Volume.of(7.5, VolumeUnit.CUBIC_METRE), Cited.practice());

  /** Loads under this are charged more by many plants. */
  public static final Limit<Volume> SHORT_LOAD =
      Limit.of(Volume.cubicYards(4), Cited.read("truck suppliers’ pages", "", "short-load trucks"));

  private Ordering() {}
}
