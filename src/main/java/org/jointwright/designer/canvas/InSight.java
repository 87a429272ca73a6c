package org.jointwright.designer.canvas;

import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Runs;
import org.jointwright.drawing.Typeface;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** Keeps words on the paper, clear of what the window writes along its top and foot. */
final class InSight {
  /**
   * What is farther off the paper than this stays there: it belongs to nothing in sight; pixels.
   */
  private static final double NEAR = 160;

  private static final double STRIP = 4;

  private InSight() {}

  /** Whether words of half that width and height about {@code middle} are seen whole. */
  static boolean isWhole(Point middle, double wide, double high, Box room) {
    return middle.x() - wide >= room.minX()
        && middle.x() + wide <= room.maxX()
        && middle.y() - high >= room.minY()
        && middle.y() + high <= room.maxY();
  }

  /** The middle of words of half that width and height, pushed in until they are seen whole. */
  static Point pushed(Point middle, double wide, double high, Box room) {
    return room.grown(NEAR).holds(middle)
        ? new Point(
            within(middle.x(), room.minX() + wide, room.maxX() - wide),
            within(middle.y(), room.minY() + high, room.maxY() - high))
        : middle;
  }

  /** The room that level words take, with as much round it as the strip beneath them. */
  static Box room(Mark.Words words) {
    double width = Runs.width(words);
    double left =
        words.at().x()
            - switch (words.anchor()) {
              case START -> 0;
              case MIDDLE -> width / 2;
              case END -> width;
            };
    double high = words.size() * Typeface.CAPITAL;
    return new Box(left, words.at().y() - high, left + width, words.at().y()).grown(STRIP);
  }

  private static double within(double value, double least, double most) {
    return Math.clamp(value, least, Math.max(least, most));
  }
}
