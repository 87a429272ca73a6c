package org.jointwright.proof.build;

import java.util.List;
import org.jointwright.proof.read.Figure;

/**
 * A mark on a side that the sheet says somewhere.
 *
 * @param side the side's name
 * @param inches how far from its first letter, inches
 * @param give how far off the same mark may be printed elsewhere, inches
 * @param said the figures that say it; none for the corner of a box-out that stands on the side
 */
record Stop(String side, double inches, double give, List<Figure> said) {
  /** Whether the two may be one mark. */
  boolean is(Figure other) {
    return Math.abs(inches - other.inches()) <= give;
  }
}
