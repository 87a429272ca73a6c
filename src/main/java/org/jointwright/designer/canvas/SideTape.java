package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.TapeMarks;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.measure.Length;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/** The tape along a side, outside the slab: hook, arrow, figure. */
final class SideTape {
  private static final double OFF = 30;
  private static final double ARROW = 12;

  /** What is left free between a line and a figure beside it. */
  private static final double CLEAR = 6;

  /** How far inside the side a figure stands that has no room outside: clear of the handle. */
  private static final double INSIDE = 14;

  private SideTape() {}

  /** The tape of an edge that has the concrete on its left. */
  static List<Mark> beside(Edge e, Viewport viewport, Words words, double size) {
    View view = viewport.view();
    String figure = words.print(Length.inches(e.length()));
    Edge on = view.on(e);
    Point out = view.heading(e.direction(0.5).left()).times(-1);
    Point by = out.times(OFF);
    List<Mark> marks = new ArrayList<>();
    Point a = on.start().plus(by);
    Point b = on.end().plus(by);
    boolean isLong = a.distance(b) > 3 * ARROW;
    if (e instanceof Segment && isLong) {
      Point way = b.minus(a).unit();
      marks.add(Mark.Line.of(a, b.minus(way.times(ARROW - 2)), 1.6, Role.STRING));
      marks.add(TapeMarks.hook(a, way, 14, 4, Role.STRING));
      marks.add(TapeMarks.arrow(b, way, ARROW, Role.STRING));
    }
    Point middle = on.at(0.5).plus(by);
    Box room = viewport.written();
    marks.addAll(figure(middle, out, figure, size, Weight.BOLD, Role.STRING, room));
    return marks;
  }

  /** Whether the figure of a side stands inside it, for want of room outside. */
  static boolean isInside(Edge e, Viewport viewport, Words words, double size) {
    View view = viewport.view();
    Point out = view.heading(e.direction(0.5).left()).times(-1);
    Point by = view.on(e).at(0.5).plus(out.times(OFF));
    String text = words.print(Length.inches(e.length()));
    double half = Typeface.of(Weight.BOLD).width(text, size) / 2;
    return isTurned(by, out, half, size, viewport.written());
  }

  private static boolean isTurned(Point by, Point out, double half, double size, Box room) {
    double high = size * 0.55;
    return !InSight.isWhole(clear(by, out, half, size), half + 4, high, room)
        && InSight.isWhole(inside(by, out, half, size), half + 4, high, room);
  }

  private static Point inside(Point by, Point out, double half, double size) {
    return clear(by.minus(out.times(OFF + INSIDE - CLEAR)), out.times(-1), half, size);
  }

  /**
   * A figure beside a tape that runs off a side: outside the tape, or, where it would be cut off
   * there, inside the side.
   *
   * @param by a point of the tape
   * @param out the way out of the slab
   * @param room where figures may stand
   */
  static List<Mark> figure(
      Point by, Point out, String text, double size, Weight weight, Role role, Box room) {
    double half = Typeface.of(weight).width(text, size) / 2;
    double high = size * 0.55;
    Point at =
        isTurned(by, out, half, size, room)
            ? inside(by, out, half, size)
            : InSight.pushed(clear(by, out, half, size), half + 4, high, room);
    return strip(at, text, size, weight, role);
  }

  /** The middle of a figure pushed outwards so that it clears the line at {@code by}. */
  static Point clear(Point by, Point out, double half, double size) {
    return by.plus(out.times(CLEAR + Math.abs(out.x()) * half + Math.abs(out.y()) * size * 0.5));
  }

  /** A figure on a strip of paper about {@code at}. */
  static List<Mark> strip(Point at, String text, double size, Weight weight, Role role) {
    double half = Typeface.of(weight).width(text, size) / 2;
    Point base = at.plus(new Point(0, size * 0.36));
    return List.of(
        Mark.Area.of(
            Rings.rounded(at.x() - half - 4, at.y() - size * 0.55, 2 * half + 8, size * 1.1, 4),
            Role.PAPER),
        Mark.Words.level(base, text, size, weight, Anchor.MIDDLE, role));
  }
}
