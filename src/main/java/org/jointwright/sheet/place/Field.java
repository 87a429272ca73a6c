package org.jointwright.sheet.place;

import java.util.List;
import org.jointwright.drawing.View;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Scale;

/**
 * How the plan lies in its field on the page.
 *
 * @param scale its scale
 * @param view the view at that scale
 */
public record Field(Scale scale, View view) {
  /** The least room round the plan, millimetres: a letter, or a chain of small figures. */
  private static final double AROUND = 7;

  /** How many scales below the largest possible are worth a try. */
  private static final int TRIED = 4;

  /**
   * The job in the middle of the field as it lies in the window, turned only where that draws it
   * larger, at the largest scales that fit, of those in {@code scales}, which begin with the
   * largest drawing.
   */
  public static List<Field> of(Layout layout, List<Scale> scales, Box field) {
    Box plan = box(layout);
    List<Field> upright = of(plan, scales, field, false);
    List<Field> across = of(plan, scales, field, true);
    boolean larger = across.getFirst().scale().ratio() < upright.getFirst().scale().ratio();
    return larger ? across : upright;
  }

  /** The same, turned as another drawing of it is; degrees. */
  public static List<Field> of(Layout layout, List<Scale> scales, Box field, double turn) {
    return of(box(layout), scales, field, turn != 0);
  }

  /** A window of the plan at the largest scale that fits. */
  public static Field of(Box window, List<Scale> scales, Box field, double turn) {
    return of(window, scales, field, turn != 0).getFirst();
  }

  private static List<Field> of(Box plan, List<Scale> scales, Box field, boolean turned) {
    double width = turned ? plan.height() : plan.width();
    double height = turned ? plan.width() : plan.height();
    Scale largest =
        Scale.fitting(
            scales, width, height, field.width() - 2 * AROUND, field.height() - 2 * AROUND);
    return scales.stream()
        .filter(s -> s.ratio() >= largest.ratio())
        .limit(TRIED)
        .map(s -> centred(s, plan, field, turned ? -90 : 0))
        .toList();
  }

  private static Box box(Layout layout) {
    return layout.plan().slabs().stream()
        .map(Slab::outline)
        .map(o -> o.ring().box())
        .reduce(Box::with)
        .orElse(new Box(0, 0, 120, 120));
  }

  private static Field centred(Scale scale, Box plan, Box field, double turn) {
    View unplaced = new View(new Point(0, 0), scale.perInch(), turn);
    Point middle = unplaced.on(plan.centre());
    Point origin = field.centre().minus(middle);
    return new Field(scale, new View(origin, scale.perInch(), turn));
  }
}
