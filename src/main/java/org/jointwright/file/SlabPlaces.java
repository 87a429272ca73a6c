package org.jointwright.file;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;

/**
 * Slabs that lie in or over each other. Both are kept as they are, for the plan may be half drawn;
 * but it is said, since concrete is poured once.
 */
final class SlabPlaces {
  /** Slabs that reach no farther into each other share an edge, inches. */
  private static final double DEEP = 1;

  /** Edges that cross at less than 10 degrees are meant as one; the sine of that. */
  private static final double FLAT = 0.17;

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
    return a.outer().box().meets(b.outer().box())
        && (reachesInto(a, b) || reachesInto(b, a) || cross(a.outer(), b.outer()));
  }

  private static boolean reachesInto(Region a, Region b) {
    return a.outer().edges().stream()
        .anyMatch(e -> isDeepIn(b, e.start()) || isDeepIn(b, e.at(0.5)));
  }

  private static boolean isDeepIn(Region region, Point p) {
    if (!region.contains(p) || region.outer().distance(p) <= DEEP) {
      return false;
    }
    return region.holes().stream().allMatch(h -> h.distance(p) > DEEP);
  }

  /** Whether edges of the two cross well away from every corner of either. */
  private static boolean cross(Ring a, Ring b) {
    List<Point> corners = new ArrayList<>(a.vertices());
    corners.addAll(b.vertices());
    for (Edge e : a.edges()) {
      for (Edge f : b.edges()) {
        if (e.box().meets(f.box())
            && Crossing.of(e, f).stream()
                .filter(c -> Math.abs(e.direction(c.first()).cross(f.direction(c.second()))) > FLAT)
                .anyMatch(c -> corners.stream().allMatch(p -> p.distance(c.at()) > DEEP))) {
          return true;
        }
      }
    }
    return false;
  }
}
