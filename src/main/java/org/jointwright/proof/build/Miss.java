package org.jointwright.proof.build;

/**
 * A length that is both printed and found by rebuilding, and how the two differ.
 *
 * @param kind what is compared
 * @param name the number or the corners of it
 * @param is as rebuilt, inches
 * @param printed as printed, inches
 * @param slack how much they may differ besides the rounding of figures, inches: what the sheet
 *     calls on a line may be a little off it
 */
public record Miss(Kind kind, String name, double is, double printed, double slack) {
  /** What is compared. */
  public enum Kind {
    /** A side or a diagonal between two corners. */
    PULL,
    /** How far a corner stands off a string. */
    STRING,
    /** The radius of a side that is an arc. */
    RADIUS,
    /** The length of a side that is an arc, or that bends. */
    SIDE,
    /** The length of a joint. */
    JOINT,
    /** The length of a strip of filler. */
    STRIP,
    /** The side of a box-out. */
    BOX_OUT
  }

  /** How much longer it is as rebuilt, inches. */
  public double off() {
    return is - printed;
  }
}
