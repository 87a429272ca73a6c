package org.jointwright.file;

import java.util.List;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Region;
import org.jointwright.shape.jts.Overlap;

/**
 * Slabs that lie in or over each other. Both are kept as they are, for the plan may be half drawn;
 * but it is said, since concrete is poured once.
 */
final class SlabPlaces {
  private SlabPlaces() {}

  /**
   * Says of each slab that it lies over one before it.
   *
   * @param slabs every slab of the plan
   * @param items where each was read
   */
  static void check(Reading reading, List<Slab> slabs, List<Json> items) {
    for (int i = 1; i < slabs.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (overlap(slabs.get(k).region(), slabs.get(i).region())) {
          Place place = new Place.Top().key("slabs").item(i).key("outline");
          reading.repair(
              place,
              items.get(i).line(),
              "file.slabsOverlap",
              slabs.get(i).id(),
              slabs.get(k).id());
        }
      }
    }
  }

  private static boolean overlap(Region a, Region b) {
    return Overlap.of(a, b, Tolerance.LENGTH_INCHES).isPresent();
  }
}
