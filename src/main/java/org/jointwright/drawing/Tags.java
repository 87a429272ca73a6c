package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Numbering;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** A joint's number in a box whose border is its joint's line: thin, thick or double. */
public final class Tags {
  private Tags() {}

  /**
   * How much room a tag takes, half of it to each side of its middle.
   *
   * @param capital the height of its figures
   */
  public static Point size(String number, Numbering.Work work, double capital) {
    double size = capital / Typeface.CAPITAL;
    double height = capital * 1.88;
    double width = Math.max(height, Typeface.of(Weight.BOLD).width(number, size) + capital * 1.06);
    double more = isDouble(work) ? capital * 0.48 : 0;
    return new Point(width + more, height + more);
  }

  /** The marks of a tag with its middle at {@code at}. */
  public static Mark.Group tag(Point at, String number, Numbering.Work work, double capital) {
    Point size = size(number, work, capital);
    List<Mark> marks = new ArrayList<>();
    Role line =
        switch (work) {
          case CUT -> Role.CONTRACTION;
          case FORM -> Role.CONSTRUCTION;
          case SET, BOX_OUT -> Role.FILLER_LINE;
        };
    double thin = capital * (isDouble(work) ? 0.119 : 0.112);
    Ring outer = box(at, size, 0, capital * (isDouble(work) ? 0.586 : 0.419));
    marks.add(Mark.Area.of(outer, Role.PAPER));
    double width = work == Numbering.Work.FORM ? capital * 0.28 : thin;
    marks.add(Mark.Line.of(new Path(outer.edges()), width, line));
    if (isDouble(work)) {
      Ring inner = box(at, size, capital * 0.336, capital * 0.307);
      marks.add(Mark.Line.of(new Path(inner.edges()), capital * 0.098, line));
    }
    Point base = new Point(at.x(), at.y() + capital / 2);
    double type = capital / Typeface.CAPITAL;
    marks.add(Mark.Words.level(base, number, type, Weight.BOLD, Anchor.MIDDLE, Role.TEXT));
    return new Mark.Group("number-" + number, "", marks);
  }

  private static boolean isDouble(Numbering.Work work) {
    return work == Numbering.Work.SET || work == Numbering.Work.BOX_OUT;
  }

  private static Ring box(Point at, Point size, double inset, double radius) {
    return Rings.rounded(
        at.x() - size.x() / 2 + inset,
        at.y() - size.y() / 2 + inset,
        size.x() - 2 * inset,
        size.y() - 2 * inset,
        radius);
  }
}
