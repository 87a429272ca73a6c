package org.jointwright.practice;

import org.jointwright.measure.Length;

/** How box-outs stand round fixed objects. */
public final class BoxOuts {
  private static final Cited ROUND_OR_TURNED =
      Cited.read("trade journal answer on isolation joints", "", "round or diamond box-outs");

  /** A box-out is at least this clear of its object. */
  public static final Limit<Length> CLEAR =
      Limit.of(Length.inches(3), Cited.practice(), ROUND_OR_TURNED);

  /** As a rule a box-out reaches no farther from its object than this. */
  public static final Limit<Length> USUAL_REACH = Limit.of(Length.inches(12), Cited.practice());

  /** As a rule the corners of a turned square stand no farther from the object than this. */
  public static final Limit<Length> USUAL_REACH_AT_CORNERS =
      Limit.of(Length.inches(24), Cited.practice());

  /** No box-out reaches farther from its object than this. */
  public static final Limit<Length> REACH = Limit.of(Length.feet(3), Cited.ownChoice());

  private BoxOuts() {}
}
