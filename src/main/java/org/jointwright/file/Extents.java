package org.jointwright.file;

import org.jointwright.measure.Length;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Ring;

/** Refuses a slab whose size is likelier a slip of the unit. */
final class Extents {
  /** More panels than this no crew cuts. */
  private static final double MOST_PANELS = 20_000;

  private Extents() {}

  static void check(Reading reading, Place place, int line, Slab slab) {
    Ring ring = slab.outline().ring();
    Box box = ring.box();
    Place outline = place.key("outline");
    String unit = reading.unit().symbol();
    if (Sizes.isTooLarge(ring)) {
      reading.problem(
          outline,
          line,
          "file.slabTooLarge",
          Length.inches(box.width()),
          Length.inches(box.height()),
          unit);
    } else if (Sizes.isTooSmall(ring)) {
      reading.problem(
          outline,
          line,
          "file.slabTooSmall",
          Length.inches(box.width()),
          Length.inches(box.height()),
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
