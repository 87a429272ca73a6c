package org.jointwright.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.jts.Overlap;

/**
 * A slab that lies over another, by more than sides that are meant as one may. Of two it is the
 * smaller, which is the one to move; of two alike the later.
 *
 * @param slab the id of the one that lies over the other
 * @param other the id of the other
 * @param overlap what lies in both
 * @param deep how far it reaches in, inches
 */
public record Lap(String slab, String other, Overlap overlap, double deep) {
  /** Every slab of a plan that lies over another, in the order of the plan. */
  public static List<Lap> of(Plan plan) {
    List<Lap> laps = new ArrayList<>();
    plan.slabs().forEach(s -> laps.addAll(of(plan, s)));
    return laps;
  }

  /** What a slab lies over, in the order of the plan. */
  public static List<Lap> of(Plan plan, Slab slab) {
    List<Lap> laps = new ArrayList<>();
    List<Slab> slabs = plan.slabs();
    int own = slabs.indexOf(slab);
    for (int i = 0; i < slabs.size(); i++) {
      double larger = slabs.get(i).region().area() - slab.region().area();
      if (i != own && (larger > 0 || (larger == 0 && i < own))) {
        of(slab, slabs.get(i)).ifPresent(laps::add);
      }
    }
    return laps;
  }

  private static Optional<Lap> of(Slab slab, Slab other) {
    return Overlap.of(slab.region(), other.region(), Tolerance.LENGTH_INCHES)
        .map(o -> new Lap(slab.id(), other.id(), o, o.depth(other.region())));
  }
}
