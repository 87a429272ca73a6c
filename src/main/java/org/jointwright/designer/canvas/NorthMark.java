package org.jointwright.designer.canvas;

import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.TapeMarks;
import org.jointwright.drawing.Weight;
import org.jointwright.shape.Point;

/** The arrow to the north at the upper right of the paper. */
final class NorthMark {
  private static final double INSET = 40;
  private static final double LENGTH = 34;

  private NorthMark() {}

  /**
   * The marks.
   *
   * @param width the paper's width
   * @param north degrees clockwise from straight up
   * @param letter the letter for north in the reader's language
   */
  static List<Mark> of(double width, double north, String letter) {
    double a = Math.toRadians(north);
    Point way = new Point(Math.sin(a), -Math.cos(a));
    Point middle = new Point(width - INSET, INSET + 12);
    Point foot = middle.minus(way.times(LENGTH / 2));
    Point tip = middle.plus(way.times(LENGTH / 2));
    Point at = tip.plus(way.times(10));
    return List.of(
        Mark.Line.of(foot, tip.minus(way.times(6)), 1.6, Role.QUIET_TEXT),
        Mark.Area.of(Rings.circle(foot, 2), Role.QUIET_TEXT),
        TapeMarks.arrow(tip, way, 13, Role.QUIET_TEXT),
        Mark.Words.level(
            at.plus(new Point(0, 5)), letter, 14, Weight.SEMIBOLD, Anchor.MIDDLE, Role.QUIET_TEXT));
  }
}
