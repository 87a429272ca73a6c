package org.jointwright.file;

import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Ring;

/** How large a slab may be before a slip of the units is the likelier reason. */
final class Extents {
  private static final double FOOT = 12;

  /** A mile, inches. */
  private static final double LONGEST = 5280 * FOOT;

  /** A million square feet, square inches. */
  private static final double LARGEST = 1e6 * FOOT * FOOT;

  /** Half a foot square, square inches. */
  private static final double SMALLEST = 36;

  /** What a ring is wide on the whole, inches: under it there is no slab, only a line. */
  private static final double NARROWEST = 3;

  /** More panels than this no crew cuts. */
  private static final double MOST_PANELS = 20_000;

  private Extents() {}

  static void check(Reading reading, Place place, int line, Slab slab) {
    Ring ring = slab.outline().ring();
    Box box = ring.box();
    Place outline = place.key("outline");
    String unit = reading.unit().symbol();
    if (box.width() > LONGEST || box.height() > LONGEST || ring.area() > LARGEST) {
      reading.problem(
          outline,
          line,
          "file.slabTooLarge",
          Decimals.rounded(box.width() / FOOT, 0),
          Decimals.rounded(box.height() / FOOT, 0),
          unit);
    } else if (ring.area() < SMALLEST || 2 * ring.area() / ring.perimeter() < NARROWEST) {
      reading.problem(
          outline,
          line,
          "file.slabTooSmall",
          Decimals.rounded(box.width(), 2),
          Decimals.rounded(box.height(), 2),
          unit);
    }
    slab.jointing()
        .maxSpacing()
        .filter(s -> ring.area() / (s.inches() * s.inches()) > MOST_PANELS)
        .ifPresent(
            s ->
                reading.problem(
                    place.key("jointing").key("maxSpacing"), line, "file.tooManyPanels"));
  }
}
