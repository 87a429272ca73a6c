package org.jointwright.sheet;

import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Tape;

/** How a crew finds a point with a tape. Distances are inches. */
sealed interface Whereabouts {
  /** At a lettered corner. */
  record AtCorner(LetteredCorner corner) implements Whereabouts {}

  /** So far along a side from the corner where its tape hooks. */
  record OnTape(Tape tape, double along) implements Whereabouts {}

  /** At the corner of a box-out, or on the rim of a round one, that the joint's length leads to. */
  record AtBoxOut(int number) implements Whereabouts {}

  /** So far along another joint, from the end that its row names first. */
  record OnJoint(int number, double along) implements Whereabouts {}

  /**
   * So far along a straight side, then square off it.
   *
   * @param left how far to the left, looking along the tape; below 0 to the right
   */
  record Off(Tape tape, double along, double left) implements Whereabouts {}
}
