package org.jointwright.practice;

/** Limits on angles, degrees. */
public final class Angles {
  /** A panel keeps no interior angle over this: an inside corner cracks. */
  public static final Limit<Double> INSIDE =
      Limit.of(
          185.0,
          Cited.read(Documents.IRREGULAR, "", "re-entrant corners, no figure"),
          Cited.ownChoice());

  /** A panel has no interior angle under this. */
  public static final Limit<Double> ACUTE = Limit.of(60.0, Documents.ACPA_JOINTING);

  /** A panel that keeps an outline corner under this may be twice as long as it is wide. */
  public static final Limit<Double> SHARP = Limit.of(75.0, Cited.ownChoice());

  /** A panel that keeps an outline corner under this has no limit of length to width. */
  public static final Limit<Double> VERY_SHARP = Limit.of(35.0, Cited.ownChoice());

  /** Concave turn at a small radius that a panel may keep along one stretch of its edge. */
  public static final Limit<Double> CONCAVE_TURN = Limit.of(135.0, Cited.ownChoice());

  /** An outline corner under this breaks off. */
  public static final Limit<Double> FEATHER = Limit.of(45.0, Cited.practice());

  /** Joints meet edges no farther off square, and arcs no farther off the radius, than this. */
  public static final Limit<Double> EDGE =
      Limit.of(15.0, Documents.HANDBOOK_JOINTS, Documents.ACPA_JOINTING, Cited.ownChoice());

  /** Joints stand no farther off parallel, square or radial to the edges they serve than this. */
  public static final Limit<Double> SLANT =
      Limit.of(1.0, Documents.HANDBOOK_JOINTS, Cited.ownChoice());

  /** A line bends no more than this where it goes on beyond another. */
  public static final Limit<Double> BEND =
      Limit.of(1.0, Documents.HANDBOOK_JOINTS, Cited.ownChoice());

  /** Two joints nearer to one line than this run through where they meet. */
  public static final Limit<Double> THROUGH = Limit.of(20.0, Cited.ownChoice());

  /** The direction in which a crack likely leaves an inside corner. */
  public static final Limit<Double> CRACK =
      Limit.of(135.0, Cited.read("page on re-entrant corners", "", "where the crack runs"));

  private Angles() {}
}
