package org.jointwright.proof.read;

/** A point as a sheet tells it to a crew. */
public sealed interface Where {
  /** At a lettered corner. */
  record Corner(String letter) implements Where {}

  /** So far along a side from its first letter. */
  record Mark(String side, Figure along) implements Where {}

  /**
   * So far along a side, then square off it.
   *
   * @param sign 1 to the left, -1 to the right
   */
  record Off(String side, Figure along, Figure off, int sign) implements Where {}

  /** At the corner or the rim of a box-out that a joint's length leads to. */
  record AtBoxOut(int number) implements Where {}

  /** So far along another joint, from the end that its row names first. */
  record OnJoint(int number, Figure along) implements Where {}

  /** At an end of another joint. */
  record EndOf(int number, boolean last) implements Where {}
}
