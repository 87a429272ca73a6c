package org.jointwright.designer.state;

/** The steps of the job that can be taken, in the order they happen. */
public enum Step {
  /** Slabs, openings, fixed objects, what the edges are against. */
  OUTLINE,
  /** Use, thickness, base. */
  SECTION,
  /** Joints and what is to be said of them. */
  JOINTS,
  /** What the job takes, and the mix. */
  ORDER,
  /** What the crew works from. */
  SHEETS
}
