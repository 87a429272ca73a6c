package org.jointwright.proof.read;

/** Where on a cut sheet something stands. */
public enum Block {
  /** On the plan. */
  PLAN,
  /** In the table of joints to cut. */
  CUT,
  /** In the table of joints to form. */
  FORM,
  /** In the table of filler to set. */
  SET,
  /** In the list of diagonals. */
  TIES,
  /** In the list of arcs. */
  ARCS,
  /** In the list of offsets. */
  OFFSETS,
  /** In the list of sides. */
  SIDES,
  /** In the list of where joints are met. */
  TEES,
  /** Beside a box-out drawn large. */
  BOX_OUT,
  /** In the orders to the crew. */
  ORDERS,
  /** In them, where edges are thicker. */
  EDGES,
  /** In the foot of the sheet. */
  FOOT
}
