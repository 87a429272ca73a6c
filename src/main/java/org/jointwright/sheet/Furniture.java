package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.measure.UnitSystem;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.page.Scale;

/** Legend, scale bar and north mark: they go where the plan leaves free ground. */
final class Furniture {
  private static final double ROW = 7;

  /** How long a line is drawn in the strip, and how far it stands from the next, millimetres. */
  private static final double SAMPLE = 11;

  private static final double GAP = 5;

  /** No scale bar is longer, millimetres. */
  private static final double LONGEST_BAR = 73;

  private final Facts facts;
  private final Scale scale;
  private final View view;
  private final List<Quad> tinted;

  /**
   * @param field how the plan lies on the page
   * @param tinted where the ground is tinted
   */
  Furniture(Facts facts, Field field, List<Quad> tinted) {
    this.tinted = tinted;
    this.facts = facts;
    this.scale = field.scale();
    this.view = field.view();
  }

  /** All three in free ground; empty where one of them finds none. */
  Optional<List<Mark>> place(Ground ground) {
    List<Mark> marks = new ArrayList<>();
    Ground.Moment before = ground.now();
    List<Legend> lines = Legend.of(facts);
    Point legend = new Point(19 + legendWidth(lines), lines.size() * ROW - 1);
    Point bar = new Point(barLength() + 14, 9);
    Point needle = new Point(14, 20);
    for (int i = lines.isEmpty() ? 1 : 0; i < 3; i++) {
      Point size = List.of(legend, bar, needle).get(i);
      Optional<Point> at = find(ground, size);
      if (at.isEmpty()) {
        ground.back(before);
        return Optional.empty();
      }
      marks.add(
          switch (i) {
            case 0 -> legend(lines, at.get());
            case 1 -> bar(at.get());
            default -> needle(at.get(), 1);
          });
      ground.add(
          Quad.box(at.get().x(), at.get().y(), at.get().x() + size.x(), at.get().y() + size.y()));
    }
    return Optional.of(marks);
  }

  private Optional<Point> find(Ground ground, Point size) {
    Box f = ground.field();
    for (double y = f.minY(); y + size.y() <= f.maxY(); y += 2) {
      for (double x = f.minX(); x + size.x() <= f.maxX(); x += 2) {
        Quad room = Quad.box(x, y, x + size.x(), y + size.y());
        if (ground.isFree(room)
            && tinted.stream().noneMatch(room::meets)
            && !onSlab(new Point(x + size.x() / 2, y + size.y() / 2))) {
          return Optional.of(new Point(x, y));
        }
      }
    }
    return Optional.empty();
  }

  private boolean onSlab(Point p) {
    Point there = view.back(p);
    return facts.plan().slabs().stream().anyMatch(s -> s.outline().ring().contains(there));
  }

  /** All three in one strip. */
  List<Mark> strip(Box box) {
    List<Mark> marks = new ArrayList<>();
    double x = box.minX();
    marks.add(bar(new Point(x, box.minY())));
    x += barLength() + 14;
    marks.addAll(rows(Legend.of(facts), new Box(x, box.minY(), box.maxX() - 13, box.maxY())));
    marks.add(needle(new Point(box.maxX() - 13, box.minY()), 0.62));
    return marks;
  }

  /** How high a strip for all three is that is so wide, millimetres. */
  static double stripHeight(Facts facts, double width) {
    int rows = rowsOf(Legend.of(facts), width - LONGEST_BAR - 14 - 13);
    return Math.max(2, rows) * ROW - 1;
  }

  /** The fewest rows in which the lines of the legend fit side by side. */
  private static int rowsOf(List<Legend> lines, double width) {
    for (int rows = 1; rows < lines.size(); rows++) {
      List<Double> columns = columns(lines, rows);
      if (columns.stream().mapToDouble(c -> c).sum() - GAP <= width) {
        return rows;
      }
    }
    return lines.size();
  }

  /** How wide the columns are where the lines stand in so many rows. */
  private static List<Double> columns(List<Legend> lines, int rows) {
    int inRow = (lines.size() + rows - 1) / rows;
    List<Double> columns = new ArrayList<>();
    for (int c = 0; c < inRow; c++) {
      double wide = 0;
      for (int i = c; i < lines.size(); i += inRow) {
        wide = Math.max(wide, wide(lines.get(i)));
      }
      columns.add(wide);
    }
    return columns;
  }

  /** The lines of the legend side by side; in more rows where one is too short for them. */
  private static List<Mark> rows(List<Legend> lines, Box room) {
    List<Mark> marks = new ArrayList<>();
    if (lines.isEmpty()) {
      return marks;
    }
    int rows = rowsOf(lines, room.width());
    List<Double> columns = columns(lines, rows);
    double x = room.minX();
    for (int c = 0; c < columns.size(); c++) {
      double y = room.minY() + (rows == 1 ? 5 : 2.5);
      for (int i = c; i < lines.size(); i += columns.size()) {
        marks.add(sample(lines.get(i), new Point(x, y), SAMPLE));
        y += ROW;
      }
      x += columns.get(c);
    }
    return marks;
  }

  private static double wide(Legend line) {
    return SAMPLE + 3 + Type.NOTE.width(line.name()) + GAP;
  }

  private static double legendWidth(List<Legend> lines) {
    return lines.stream().mapToDouble(l -> Type.NOTE.width(l.name())).max().orElse(0) + 1;
  }

  private static Mark legend(List<Legend> lines, Point at) {
    List<Mark> marks = new ArrayList<>();
    double y = at.y() + 3.2;
    for (Legend line : lines) {
      marks.add(sample(line, new Point(at.x(), y), 16));
      y += ROW;
    }
    return new Mark.Group("legend", "", marks);
  }

  private static Mark sample(Legend line, Point at, double length) {
    List<Mark> marks =
        new ArrayList<>(line.sample().along(Path.straight(at, at.plus(new Point(length, 0)))));
    marks.add(Type.NOTE.at(at.x() + length + 3, at.y() + 1.5, line.name(), Anchor.START));
    return new Mark.Group("", "", marks);
  }

  /** One third of the bar, inches: the round length nearest to 17 mm of paper. */
  private double step() {
    boolean metric = facts.words().units() == UnitSystem.METRIC;
    double unit = metric ? 1 / 0.0254 : 12;
    double[] steps =
        metric
            ? new double[] {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000}
            : new double[] {0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000};
    double best = steps[0];
    for (double s : steps) {
      if (Math.abs(s * unit * scale.perInch() - 17)
          < Math.abs(best * unit * scale.perInch() - 17)) {
        best = s;
      }
    }
    return best * unit;
  }

  private double barLength() {
    return 3 * step() * scale.perInch();
  }

  private Mark bar(Point corner) {
    List<Mark> marks = new ArrayList<>();
    double step = step() * scale.perInch();
    Point at = corner.plus(new Point(4, 5.4));
    for (int i = 0; i < 3; i++) {
      Ring box = Rings.box(at.x() + i * step, at.y(), step, 2);
      marks.add(Mark.Area.of(box, i % 2 == 0 ? Role.TEXT : Role.PAPER));
      marks.add(Mark.Line.of(new Path(box.edges()), 0.25, Role.TEXT));
    }
    for (int i = 0; i <= 3; i++) {
      marks.add(
          Type.NOTE.at(at.x() + i * step, at.y() - 1.6, barFigure(i * step()), Anchor.MIDDLE));
    }
    return new Mark.Group("scale-bar", "", marks);
  }

  private String barFigure(double inches) {
    if (inches == 0) {
      return "0";
    }
    if (facts.words().units() == UnitSystem.METRIC) {
      double metres = inches * 0.0254;
      return metres < 1
          ? Math.round(metres * 1000) + " mm"
          : new java.math.BigDecimal(String.format(java.util.Locale.ROOT, "%.1f", metres))
                  .stripTrailingZeros()
                  .toPlainString()
              + " m";
    }
    return inches % 12 == 0 ? Math.round(inches / 12) + "′" : facts.print(inches);
  }

  /** The north mark, {@code factor} times its full size; its letter stays as large. */
  private Mark needle(Point corner, double factor) {
    double half = 5.6 * factor;
    double reach = half + 2.6;
    Point middle = corner.plus(new Point(6.5, 0.6 + 1.75 + reach));
    Point up = new Point(0, -1).turned(Math.toRadians(facts.plan().north() - view.turn()));
    Point tip = middle.plus(up.times(half));
    Point tail = middle.minus(up.times(half));
    Point notch = tip.minus(up.times(3.4 * factor));
    Point wing = tip.minus(up.times(4.6 * factor));
    Point across = up.left().times(1.5 * factor);
    Ring left = Ring.of(List.of(tip, wing.plus(across), notch));
    Ring right = Ring.of(List.of(tip, wing.minus(across), notch));
    Point letter = middle.plus(up.times(reach)).plus(new Point(0, 1.75));
    return new Mark.Group(
        "north",
        "",
        List.of(
            Mark.Line.of(tail, tip, 0.55, Role.TEXT),
            Mark.Area.of(left, Role.TEXT),
            Mark.Area.of(right, Role.PAPER),
            Mark.Line.of(new Path(right.edges()), 0.4, Role.TEXT),
            Mark.Area.of(Rings.circle(tail, 0.75), Role.TEXT),
            Type.TABLE_NUMBER.at(letter.x(), letter.y(), facts.say("north"), Anchor.MIDDLE)));
  }
}
