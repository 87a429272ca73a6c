package org.jointwright.sheet.place;

import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Runs;
import org.jointwright.drawing.Typeface;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** A convex figure of four corners on the page: a text, however it is turned, or a thin line. */
public record Quad(List<Point> corners, Box box) {
  private Quad(List<Point> corners) {
    this(corners, Box.of(corners.get(0), corners.get(1)).with(corners.get(2)).with(corners.get(3)));
  }

  /** The room a line of text takes, with {@code clear} millimetres round it. */
  public static Quad of(Mark.Words words, double clear) {
    double width = Runs.width(words);
    double left =
        switch (words.anchor()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    double capital = words.size() * Typeface.CAPITAL;
    boolean larger = Runs.of(words.text()).stream().anyMatch(Runs.Run::larger);
    double top = -capital * (larger ? words.fraction() : 1.02);
    double low = hangs(words.text()) ? capital * 0.3 : capital * 0.03;
    double angle = Math.toRadians(words.angle());
    return new Quad(
        List.of(
            place(words.at(), left - clear, top - clear, angle),
            place(words.at(), left + width + clear, top - clear, angle),
            place(words.at(), left + width + clear, low + clear, angle),
            place(words.at(), left - clear, low + clear, angle)));
  }

  private static boolean hangs(String text) {
    return text.chars().anyMatch(c -> "gjpqy,;()Q".indexOf(c) >= 0);
  }

  private static Point place(Point at, double x, double y, double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new Point(at.x() + x * c + y * s, at.y() - x * s + y * c);
  }

  /** An upright box. */
  public static Quad box(double minX, double minY, double maxX, double maxY) {
    return new Quad(
        List.of(
            new Point(minX, minY),
            new Point(maxX, minY),
            new Point(maxX, maxY),
            new Point(minX, maxY)));
  }

  /** A box round its middle. */
  public static Quad round(Point middle, double width, double height) {
    return box(
        middle.x() - width / 2,
        middle.y() - height / 2,
        middle.x() + width / 2,
        middle.y() + height / 2);
  }

  /** A straight line with {@code clear} millimetres to each side; ends are not lengthened. */
  public static Quad line(Point from, Point to, double clear) {
    Point along = to.minus(from);
    Point off = along.norm() == 0 ? new Point(clear, 0) : along.unit().left().times(clear);
    return new Quad(List.of(from.plus(off), to.plus(off), to.minus(off), from.minus(off)));
  }

  /** Whether the two share any ground. */
  public boolean meets(Quad other) {
    return box.meets(other.box) && !apart(this, other) && !apart(other, this);
  }

  /** Whether a side of {@code a} has all of {@code b} beyond it. */
  private static boolean apart(Quad a, Quad b) {
    for (int i = 0; i < 4; i++) {
      Point edge = a.corners.get((i + 1) % 4).minus(a.corners.get(i));
      Point axis = edge.left();
      double aMin = Double.POSITIVE_INFINITY;
      double aMax = Double.NEGATIVE_INFINITY;
      double bMin = Double.POSITIVE_INFINITY;
      double bMax = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < 4; k++) {
        double pa = axis.dot(a.corners.get(k));
        double pb = axis.dot(b.corners.get(k));
        aMin = Math.min(aMin, pa);
        aMax = Math.max(aMax, pa);
        bMin = Math.min(bMin, pb);
        bMax = Math.max(bMax, pb);
      }
      if (aMax <= bMin || bMax <= aMin) {
        return true;
      }
    }
    return false;
  }

  /** Whether all of it lies in the upright box. */
  public boolean within(double minX, double minY, double maxX, double maxY) {
    return box.minX() >= minX && box.maxX() <= maxX && box.minY() >= minY && box.maxY() <= maxY;
  }
}
