package org.jointwright.plan;

import org.jointwright.shape.Box;
import org.jointwright.shape.Ring;

/**
 * How large a slab may be before a slip of the figures or of the unit is the likelier reason, and
 * how near its lines may come to each other. Common practice, no source: nothing this program is
 * for comes near them, and beyond them laying joints would take for ever. A file and the window
 * both hold to them.
 */
public final class Sizes {
  /** A mile, inches. */
  public static final double LONGEST = 5280 * 12.0;

  /** A million square feet, square inches. */
  public static final double LARGEST = 1e6 * 144;

  /** Half a foot square, square inches. */
  public static final double SMALLEST = 36;

  /** No slab is thinner, inches. */
  public static final double THINNEST = 1;

  /** No slab is thicker, inches: such a figure is feet written for inches. */
  public static final double THICKEST = 24;

  /** Nearer than this two lines are one on the ground, inches. */
  public static final double CLEAR = 0.5;

  /** Points nearer than this are one, inches: under the rounding of four decimals of a foot. */
  public static final double SAME = 0.005;

  /** What a ring is wide on the whole, inches: under it there is no slab, only a line. */
  private static final double NARROWEST = 3;

  private Sizes() {}

  /** Whether a ring reaches farther or bounds more than any slab. */
  public static boolean isTooLarge(Ring ring) {
    return isTooLong(ring.box()) || ring.area() > LARGEST;
  }

  /** Whether what fills a box reaches farther than any slab. */
  public static boolean isTooLong(Box box) {
    return box.width() > LONGEST || box.height() > LONGEST;
  }

  /** Whether a ring bounds so little, or so narrow a strip, that it is no slab. */
  public static boolean isTooSmall(Ring ring) {
    return ring.area() < SMALLEST || 2 * ring.area() / ring.perimeter() < NARROWEST;
  }
}
