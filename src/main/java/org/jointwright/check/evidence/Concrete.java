package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.along.Nearness;
import org.jointwright.joint.Cutout;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;

/**
 * Where a slab has concrete.
 *
 * @param region the slab, openings taken out
 * @param cutouts what is left out round fixed objects
 */
public record Concrete(Region region, List<Cutout> cutouts) {
  /** Copies the list. */
  public Concrete {
    cutouts = List.copyOf(cutouts);
  }

  static Concrete of(Slab slab, List<Cutout> cutouts) {
    return new Concrete(slab.region(), cutouts);
  }

  /** The edges of the slab and of its openings. */
  public List<Edge> edges() {
    List<Edge> edges = new ArrayList<>(region.outer().edges());
    region.holes().forEach(h -> edges.addAll(h.edges()));
    return edges;
  }

  /** Those and the edges of what is left out round fixed objects. */
  public List<Edge> edgesAndCutouts() {
    List<Edge> edges = edges();
    cutouts.forEach(c -> edges.addAll(c.ring().edges()));
    return edges;
  }

  /** Whether a point lies on the slab or within the tolerance of it, box-outs counted as slab. */
  public boolean reaches(Point p) {
    return region.contains(p) || Nearness.isOn(edges(), p, Nearness.ON);
  }

  /** Whether a point lies on concrete or within the tolerance of it. */
  public boolean reachesOutsideCutouts(Point p) {
    return reaches(p) && cutouts.stream().map(Cutout::ring).noneMatch(r -> isDeepIn(r, p));
  }

  private static boolean isDeepIn(Ring ring, Point p) {
    return ring.contains(p) && ring.distance(p) > Nearness.ON;
  }

  /** Whether a point lies in a cutout or within {@code by} inches of one. */
  public boolean isCutOut(Point p, double by) {
    return cutouts.stream()
        .map(Cutout::ring)
        .anyMatch(r -> r.contains(p) || Nearness.isOn(r.edges(), p, by));
  }
}
