package org.jointwright.layout.exact;

/** How near a slab's layout is known to be to the cheapest of its family of square cuts. */
public sealed interface Nearness {
  /** Why nothing is proved. */
  enum Why {
    /** An edge is an arc. */
    ARCS,
    /** An edge is not square to the others. */
    SLANTED,
    /** Steps under an inch, or inside corners that count as one. */
    JOGS,
    /** A post or drain stands in it. */
    FIXED,
    /** The layout itself breaks a rule that must be kept. */
    BROKEN,
    /** Joints other than contraction joints run across it. */
    OTHER_JOINTS,
    /** A locked joint that does not run square. */
    HELD,
    /** More rectangles than are weighed. */
    MANY,
    /** The allotted tries did not suffice for any bound. */
    TRIES
  }

  /** Nothing in the family costs less. */
  record Least() implements Nearness {}

  /**
   * At most a share of the cost could be gained.
   *
   * @param share of the layout's cost, over 0 and at most 1
   * @param known the share that a layout of the family is known to gain; 0 where none is known
   */
  record AtMost(double share, double known) implements Nearness {}

  /** No layout of the family meets every rule that must be kept. */
  record NoneMeets() implements Nearness {}

  /** Nothing is proved. */
  record Unproved(Why why) implements Nearness {}
}
