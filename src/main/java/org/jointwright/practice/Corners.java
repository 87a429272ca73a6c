package org.jointwright.practice;

import org.jointwright.measure.Length;

/** Limits on what happens at corners. */
public final class Corners {
  /** An edge that steps aside by less is no corner. */
  public static final Limit<Length> JOG = Limit.of(Length.inches(1), Cited.ownChoice());

  /** Inside corners this near each other count as one. */
  public static final Limit<Length> TOGETHER = Limit.of(Length.inches(6), Cited.ownChoice());

  /** A concave arc of a smaller radius is a corner with its edge rounded off. */
  public static final Limit<Length> ROUNDED_OFF = Limit.of(Length.inches(6), Cited.ownChoice());

  /** Concave turn counts at a smaller radius than this. */
  public static final Limit<Length> TIGHT_RADIUS = Limit.of(Length.feet(5), Cited.ownChoice());

  /** The ends of a corner joint stand at least this far from the corner. */
  public static final Limit<Length> CORNER_JOINT_NEAR =
      Limit.of(Length.inches(12), Cited.practice());

  /** The ends of a corner joint stand at most this far from the corner. */
  public static final Limit<Length> CORNER_JOINT_FAR =
      Limit.of(Length.inches(24), Cited.practice());

  private Corners() {}
}
