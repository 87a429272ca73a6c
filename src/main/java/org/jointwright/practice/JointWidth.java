package org.jointwright.practice;

import org.jointwright.measure.Length;

/** How wide contraction joints are at the top. */
public final class JointWidth {
  /** The narrowest tooled groove. */
  public static final Limit<Length> TOOLED_LEAST =
      Limit.of(Length.inches(1.0 / 8), Cited.read(Documents.MATTESON, "", "section 98.09(D)"));

  /** The widest tooled groove. */
  public static final Limit<Length> TOOLED_MOST =
      Limit.of(Length.inches(1.0 / 4), Cited.read(Documents.MATTESON, "", "section 98.09(D)"));

  /** The usual saw cut that is left unsealed. */
  public static final Limit<Length> SAWN =
      Limit.of(
          Length.inches(1.0 / 8),
          Cited.read(Documents.ACI_330, "as copied in 1996", "on sawn joints"));

  /** The radius of a tooled edge. */
  public static final Limit<Length> EDGE_RADIUS =
      Limit.of(Length.inches(1.0 / 4), Cited.read(Documents.MATTESON, "", "section 98.09(D)"));

  private JointWidth() {}
}
