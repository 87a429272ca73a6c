package org.jointwright.practice;

import org.jointwright.measure.Length;

/** What is forgiven: always in favour of the layout. */
public final class Tolerance {
  /** On lengths. */
  public static final Limit<Length> LENGTH = Limit.of(Length.inches(0.5), Cited.ownChoice());

  /** On angles, degrees. */
  public static final Limit<Double> ANGLE = Limit.of(1.0, Cited.ownChoice());

  /** On longer side over shorter. */
  public static final Limit<Double> ASPECT = Limit.of(0.01, Cited.ownChoice());

  /** Joints that line up across a line meet within this. */
  public static final Limit<Length> LINE_UP = Limit.of(Length.inches(1), Cited.ownChoice());

  /** A joint end on a whole inch stands within this of it. */
  public static final Limit<Length> MARK = Limit.of(Length.inches(1.0 / 16), Cited.ownChoice());

  /** A joint that lies on an edge or another joint for more than this runs along it. */
  public static final Limit<Length> ALONG = Limit.of(Length.inches(6), Cited.ownChoice());

  /** The same tolerance on lengths, inches. */
  public static final double LENGTH_INCHES = LENGTH.value().inches();

  private Tolerance() {}
}
