package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Weight;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** The scale bar at the lower left of the paper: two fields of a round length. */
final class ScaleBar {
  private static final double LEFT = 24;
  private static final double BELOW = 26;
  private static final double WIDEST = 130;
  private static final double HEIGHT = 5;
  private static final double[] FEET = {0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 250, 500, 1000};
  private static final double[] METRES = {0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 300};

  private ScaleBar() {}

  static List<Mark> of(Viewport viewport, boolean metric) {
    double[] steps = metric ? METRES : FEET;
    LengthUnit unit = metric ? LengthUnit.METRE : LengthUnit.FOOT;
    double half = steps[0];
    for (double s : steps) {
      if (2 * Length.of(s, unit).inches() * viewport.scale() <= WIDEST) {
        half = s;
      }
    }
    double px = Length.of(half, unit).inches() * viewport.scale();
    double y = viewport.height() - BELOW;
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Area.of(Rings.box(LEFT, y, px, HEIGHT), Role.OUTLINE));
    marks.add(Mark.Line.of(new Path(Rings.box(LEFT, y, 2 * px, HEIGHT).edges()), 1, Role.OUTLINE));
    for (int i = 0; i <= 2; i++) {
      String figure = i == 0 ? "0" : figure(half * i, metric);
      Point at = new Point(LEFT + i * px, y - 7);
      marks.add(
          Mark.Words.level(
              at,
              figure,
              13,
              Weight.REGULAR,
              i == 0 ? Anchor.START : Anchor.MIDDLE,
              Role.QUIET_TEXT));
    }
    return marks;
  }

  private static String figure(double value, boolean metric) {
    if (!metric && value < 1) {
      return Math.round(value * 12) + "″";
    }
    String number =
        value == Math.rint(value)
            ? Long.toString(Math.round(value))
            : Double.toString(Math.round(value * 100) / 100.0);
    return metric ? number + " m" : number + "′";
  }
}
