package org.jointwright.practice;

import org.jointwright.measure.Length;

/** What layouts that break no rule are compared by, all in length of joint to cut. */
public final class Cost {
  /** What a tee adds: the joint that would carry it on is shorter as a rule. */
  public static final Limit<Length> TEE = Limit.of(Length.feet(8), Cited.ownChoice());

  /** What a meeting of three joints adds of which none runs through. */
  public static final Limit<Length> Y = Limit.of(Length.feet(4), Cited.ownChoice());

  /** What a joint adds that misses the neighbouring slab's across a shared edge. */
  public static final Limit<Length> MISSED = Limit.of(Length.feet(2), Cited.ownChoice());

  /** The spread of panel areas, standard deviation over mean, that adds nothing. */
  public static final Limit<Double> EVEN = Limit.of(0.10, Cited.ownChoice());

  /** The share of the joints' length that a spread of one more adds. */
  public static final Limit<Double> UNEVEN = Limit.of(0.25, Cited.ownChoice());

  /**
   * What joints that mirror on a slab that mirrors may cost more than others, as a share of what
   * those cost: common practice, no source.
   */
  public static final Limit<Double> MIRRORED = Limit.of(0.05, Cited.ownChoice());

  /** The same at most, on large slabs: what a tee costs; common practice, no source. */
  public static final Limit<Length> MIRRORED_MOST = Limit.of(Length.feet(8), Cited.ownChoice());

  private Cost() {}
}
