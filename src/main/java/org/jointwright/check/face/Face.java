package org.jointwright.check.face;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jointwright.joint.Panel;
import org.jointwright.joint.PanelMeasures;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;

/**
 * A panel, its measures and its sides as the rules see them.
 *
 * @param panel the panel
 * @param measures its measures
 * @param loops its outer edge first, then the rims of its holes
 * @param at a point in it to point at, on the slab's concrete
 */
public record Face(Panel panel, PanelMeasures measures, List<Loop> loops, Point at) {
  /** Copies the list. */
  public Face {
    loops = List.copyOf(loops);
  }

  /** The panel's name. */
  public String id() {
    return panel.id();
  }

  /** All its sides. */
  public Stream<Step> steps() {
    return loops.stream().flatMap(l -> l.steps().stream());
  }

  /** Whether an arc of the outline, of an opening or of a box-out is among its sides. */
  public boolean isBowed() {
    return steps().anyMatch(s -> s.hard() && s.edge() instanceof Arc);
  }

  /** The sharpest corner of the outline that it keeps whole, degrees; empty when it keeps none. */
  public OptionalDouble sharpestOutlineCorner() {
    return loops.stream()
        .flatMap(l -> l.knots().stream().filter(l::isOnOutline))
        .mapToDouble(Knot::interior)
        .min();
  }
}
