package org.jointwright.check.wish;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.BoxOuts;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Fixed objects whose box-out no joint may leave. A box-out reaches no farther from its object than
 * a limit. Where it reaches neither an edge of the slab nor another box-out, it is a hole that some
 * joint must leave (M8); where a zone that is kept clear reaches farther on every side, that joint
 * runs in the zone (M10).
 */
final class HemmedObjects {
  private static final double REACH = BoxOuts.REACH.value().inches();

  /** A zone must reach so much farther than a box-out: one tolerance for each of the two rules. */
  private static final double BOTH = 2 * Tolerance.LENGTH_INCHES;

  /** How finely arcs are followed, inches. */
  private static final double FINE = 1.0 / 32;

  private HemmedObjects() {}

  /**
   * An object amid a zone.
   *
   * @param object the object
   * @param zone the zone
   * @param beyond how far the zone reaches beyond it at least, inches
   */
  record Hemmed(FixedObject object, KeepClear zone, double beyond) {}

  /** The hemmed objects of a slab, for the zones that no locked joint crosses. */
  static List<Hemmed> of(Plan plan, Slab slab, List<KeepClear> zones) {
    List<FixedObject> objects = plan.fixedIn(slab.id());
    List<Hemmed> hemmed = new ArrayList<>();
    for (FixedObject object : objects) {
      Ring ring = object.shape().ring();
      for (KeepClear zone : zones) {
        Ring round = zone.outline().ring();
        double beyond = gap(ring, round);
        boolean isHemmed =
            round.contains(ring.box().centre())
                && beyond >= REACH + BOTH
                && rims(slab).allMatch(r -> gap(ring, r) > REACH + BOTH)
                && objects.stream()
                    .filter(o -> !o.equals(object))
                    .allMatch(o -> gap(ring, o.shape().ring()) > 2 * (REACH + BOTH));
        if (isHemmed) {
          hemmed.add(new Hemmed(object, zone, beyond));
        }
      }
    }
    return hemmed;
  }

  private static Stream<Ring> rims(Slab slab) {
    return Stream.concat(
        Stream.of(slab.outline().ring()), slab.openings().stream().map(o -> o.outline().ring()));
  }

  /** The least distance between the edges of two rings, to what arcs are followed to. */
  private static double gap(Ring a, Ring b) {
    return Stream.concat(distances(a, b), distances(b, a))
        .mapToDouble(Double::doubleValue)
        .min()
        .orElse(0);
  }

  private static Stream<Double> distances(Ring from, Ring to) {
    return Chords.round(from, FINE).stream().map((Point p) -> to.distance(p));
  }
}
