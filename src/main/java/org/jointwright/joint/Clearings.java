package org.jointwright.joint;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;

/** Where a slab has no concrete of its own: beyond its outline, in openings, in box-outs. */
record Clearings(Ring outline, List<Clearings.Clearing> all) {
  /** One, with its box, which is asked first: there may be hundreds. */
  record Clearing(Ring ring, Box box) {
    boolean holds(Point p) {
      return box.holds(p) && ring.contains(p);
    }
  }

  static Clearings of(Region slab, List<Cutout> cutouts) {
    List<Clearing> all = new ArrayList<>();
    slab.holes().forEach(h -> all.add(new Clearing(h, h.box())));
    cutouts.forEach(c -> all.add(new Clearing(c.ring(), c.ring().box())));
    return new Clearings(slab.outer(), all);
  }

  /** Whether concrete is left at a place. */
  boolean leave(Point p) {
    return outline.contains(p) && all.stream().noneMatch(c -> c.holds(p));
  }
}
