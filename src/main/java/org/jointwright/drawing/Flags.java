package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** A finding's stake with its numbered flag; severities differ by shape as well as by colour. */
public final class Flags {
  /** How bad a finding is, as the flag shows it. */
  public enum Shape {
    /** Square-cut and solid. */
    MUST,
    /** Notched. */
    SHOULD,
    /** Round and hollow. */
    NOTE
  }

  private Flags() {}

  /** How wide a flag is; signs between numbers are narrow. */
  public static double width(String number, double size) {
    long digits = number.chars().filter(Character::isDigit).count();
    return size * (1.7 + 0.5 * Math.max(0, digits - 1) + 0.25 * (number.length() - digits));
  }

  /**
   * A stake that stands at {@code at}.
   *
   * @param number the finding's number, or those of several
   * @param size the height of the flag, 19 px at 100 %
   */
  public static Mark.Group flag(Point at, String number, Shape shape, double size) {
    double left = at.x();
    double top = at.y() - size * 2;
    double width = width(number, size);
    double line = size * 0.09;
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Line.of(at, new Point(left, top), line, Role.OUTLINE));
    Ring cloth = cloth(shape, left, top, width, size);
    Role figure =
        switch (shape) {
          case MUST -> {
            marks.add(Mark.Area.of(cloth, Role.MUST));
            yield Role.ON_MUST;
          }
          case SHOULD -> {
            marks.add(Mark.Area.of(cloth, Role.SHOULD));
            marks.add(Mark.Line.of(new Path(cloth.edges()), line * 0.8, Role.ON_SHOULD));
            yield Role.ON_SHOULD;
          }
          case NOTE -> {
            marks.add(Mark.Area.of(cloth, Role.PAPER));
            marks.add(Mark.Line.of(new Path(cloth.edges()), line, Role.NOTE));
            yield Role.NOTE;
          }
        };
    Point base = new Point(left + width * 0.47, top + size * 0.76);
    marks.add(Mark.Words.level(base, number, size * 0.72, Weight.BOLD, Anchor.MIDDLE, figure));
    return new Mark.Group("finding-" + number, "", marks);
  }

  private static Ring cloth(Shape shape, double x, double y, double w, double h) {
    Point a = new Point(x, y);
    Point b = new Point(x + w, y);
    Point c = new Point(x + w, y + h);
    Point d = new Point(x, y + h);
    return switch (shape) {
      case MUST -> Ring.of(List.of(a, b, c, d));
      case SHOULD -> Ring.of(List.of(a, b, new Point(x + w - h * 0.3, y + h / 2), c, d));
      case NOTE -> {
        Point b1 = new Point(x + w - h / 2, y);
        Point c1 = new Point(x + w - h / 2, y + h);
        Point centre = new Point(x + w - h / 2, y + h / 2);
        yield new Ring(
            List.<Edge>of(
                new Segment(a, b1),
                new Arc(b1, c1, centre, Math.PI),
                new Segment(c1, d),
                new Segment(d, a)));
      }
    };
  }
}
