package org.jointwright.practice;

/** How well a figure's source is known. */
public enum Flag {
  /** The words or the number were read in the document. */
  READ,
  /** They were read where another text quotes or adapts the document. */
  READ_SECOND_HAND,
  /** They are remembered; nobody has read them for this program. */
  MEMORY,
  /** What crews do; no document is known that says so. */
  PRACTICE,
  /** A figure this program chose, where the trade has none. */
  OWN_CHOICE,
  /** The plan itself says so: what its user chose or locked. */
  PLAN
}
