package org.jointwright.sheet;

import org.jointwright.drawing.View;
import org.jointwright.joint.Layout;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/**
 * How the plan lies in its field on the page.
 *
 * @param scale its scale
 * @param view the view at that scale
 */
record Field(Scale scale, View view) {
  /** Room for a chain on each side of the plan, millimetres. */
  private static final double CHAIN = 14;

  /** The job's long side across, as large as the series allows, in the middle of the field. */
  static Field of(Layout layout, UnitSystem units, Box field) {
    Box plan =
        layout.plan().slabs().stream()
            .map(Slab::outline)
            .map(o -> o.ring().box())
            .reduce(Box::with)
            .orElse(new Box(0, 0, 120, 120));
    boolean turned = plan.height() > plan.width() * 1.05;
    double width = turned ? plan.height() : plan.width();
    double height = turned ? plan.width() : plan.height();
    Scale scale =
        Scale.fitting(units, width, height, field.width() - 2 * CHAIN, field.height() - 2 * CHAIN);
    View unplaced = new View(new Point(0, 0), scale.perInch(), turned ? -90 : 0);
    Point middle = unplaced.on(plan.centre());
    Point origin = field.centre().minus(middle);
    return new Field(scale, new View(origin, scale.perInch(), unplaced.turn()));
  }
}
