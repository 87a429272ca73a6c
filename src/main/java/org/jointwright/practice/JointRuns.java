package org.jointwright.practice;

/** Where joints run and end. */
public final class JointRuns {
  /** Joints end at edges, at openings, at box-outs and at other joints. */
  public static final Cited ENDS = Documents.HANDBOOK_JOINTS;

  /** Joints are straight unless that cannot be; curved ones are hard to saw. */
  public static final Cited STRAIGHT = Documents.HANDBOOK_JOINTS;

  /** A joint goes on from edge to edge: a crack runs on from one that stops short. */
  public static final Cited CONTINUOUS =
      Cited.read(Documents.TM_5_809_12, "1987", "on joints from edge to edge");

  /** A contraction joint does not end at one that crosses it. */
  public static final Cited NOT_AT_OTHERS = Cited.read(Documents.IRREGULAR, "", "where joints end");

  /**
   * Where a joint of one slab misses those of another, steel in the newer slab along the edge, or a
   * strip of filler, keeps the crack from running on.
   */
  public static final Cited MISSED =
      Cited.read("UFC 3-260-02", "2001", "chapter 12, paragraph c, on joints that do not match");

  /** How a crew looks after what was laid otherwise than the rules would have it. */
  public static final Cited LOOKED_AFTER = Cited.practice();

  private JointRuns() {}
}
