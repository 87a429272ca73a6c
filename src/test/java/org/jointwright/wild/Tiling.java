package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.BoxOut;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Whether panels tile their slab: together they are as large, and none lies over another. */
final class Tiling {
  /** A hundredth of a square foot, square inches. */
  private static final double OFF = 1.44;

  private Tiling() {}

  /** What is wrong; nothing where they do. */
  static List<String> faults(SlabLayout laid) {
    List<String> faults = new ArrayList<>();
    double whole = laid.slab().region().area();
    for (BoxOut b : laid.boxOuts()) {
      whole -= b.outline().ring().area();
    }
    double off = laid.panels().stream().mapToDouble(Panel::area).sum() - whole;
    if (Math.abs(off) > OFF) {
      faults.add(String.format(Locale.ROOT, "panels are %.2f sq in off the slab", off));
    }
    Polygon[] panels =
        laid.panels().stream().map(p -> Planar.polygon(p.region())).toArray(Polygon[]::new);
    if (CoverageValidator.isValid(panels)) {
      return faults;
    }
    // Chords for arcs that meet at next to no angle lie over each other by next to nothing.
    double over = 0;
    for (int i = 0; i < panels.length; i++) {
      for (int k = i + 1; k < panels.length; k++) {
        if (panels[i].getEnvelopeInternal().intersects(panels[k].getEnvelopeInternal())) {
          Geometry both = OverlayNGRobust.overlay(panels[i], panels[k], OverlayNG.INTERSECTION);
          over = Math.max(over, both.getArea());
        }
      }
    }
    if (over > OFF || hasNoArc(laid)) {
      faults.add(String.format(Locale.ROOT, "no coverage, %.3f sq in over each other", over));
    }
    return faults;
  }

  private static boolean hasNoArc(SlabLayout laid) {
    return laid.panels().stream()
        .flatMap(p -> p.region().outer().edges().stream())
        .allMatch(e -> e instanceof org.jointwright.shape.Segment);
  }
}
