package org.jointwright.sheet.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.page.Scale;
import org.jointwright.text.Words;

/** Legend, scale bar and north mark: they go where the plan leaves free ground. */
public final class Furniture {
  private static final double ROW = 7;

  /** How long a line is drawn in the strip, and how far it stands from the next, millimetres. */
  private static final double SAMPLE = 11;

  private static final double GAP = 5;

  /** Half a north mark, and how far beyond its tip the letter’s middle stands; millimetres. */
  private static final double NEEDLE = 5.6;

  private static final double LETTER = 2.6;

  /** How wide the north mark is in a strip, whichever way it points; millimetres. */
  private static final double STRIP_NEEDLE = 16;

  /** No scale bar is longer, millimetres. */
  private static final double LONGEST_BAR = 73;

  /** What else a strip holds beside the legend, millimetres. */
  private static final double BESIDE_LEGEND = LONGEST_BAR + 14 + STRIP_NEEDLE;

  /** How far the legend stands under the bar where it does not stand beside it, millimetres. */
  private static final double UNDER_BAR = 10;

  private final Plan plan;
  private final Words words;
  private final Scale scale;
  private final View view;
  private final List<Quad> tinted;

  /**
   * @param field how the plan lies on the page
   * @param tinted where the ground is tinted
   */
  public Furniture(Plan plan, Words words, Field field, List<Quad> tinted) {
    this.tinted = tinted;
    this.plan = plan;
    this.words = words;
    this.scale = field.scale();
    this.view = field.view();
  }

  /** All three in free ground; empty where one of them finds none. */
  public Optional<List<Mark>> place(Ground ground) {
    return place(ground, Legend.of(plan, words));
  }

  /** Scale bar and north mark in free ground; empty where one of them finds none. */
  public Optional<List<Mark>> placeBare(Ground ground) {
    return place(ground, List.of());
  }

  private Optional<List<Mark>> place(Ground ground, List<Legend> lines) {
    List<Mark> marks = new ArrayList<>();
    Ground.Moment before = ground.now();
    Point legend = new Point(19 + legendWidth(lines), lines.size() * ROW - 1);
    Point bar = new Point(barLength() + 14, 9);
    Point needle = needleSize();
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
            default -> needle(at.get().plus(size.times(0.5)), 1);
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
    return plan.slabs().stream().anyMatch(s -> s.outline().ring().contains(there));
  }

  /** All three in one strip. */
  public List<Mark> strip(Box box) {
    List<Mark> marks = new ArrayList<>();
    List<Legend> lines = Legend.of(plan, words);
    boolean beside = isBeside(lines, box.width());
    double x = box.minX() + (beside ? barLength() + 14 : 0);
    double y = box.minY() + (beside ? 0 : UNDER_BAR);
    marks.add(bar(new Point(box.minX(), box.minY())));
    marks.addAll(rows(lines, new Box(x, y, box.maxX() - STRIP_NEEDLE, box.maxY())));
    marks.add(needle(new Point(box.maxX() - STRIP_NEEDLE / 2, box.minY() + 8.4), 0.62));
    return marks;
  }

  /** How high a strip for all three is that is so wide, millimetres. */
  public static double stripHeight(Plan plan, Words words, double width) {
    List<Legend> lines = Legend.of(plan, words);
    if (!isBeside(lines, width)) {
      return UNDER_BAR + rowsOf(lines, width - STRIP_NEEDLE) * ROW - 1;
    }
    return Math.max(2, rowsOf(lines, width - BESIDE_LEGEND)) * ROW - 1;
  }

  /** Whether a line of the legend has room between the longest bar and the north mark. */
  private static boolean isBeside(List<Legend> lines, double width) {
    return lines.stream().allMatch(l -> wide(l) - GAP <= width - BESIDE_LEGEND);
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
    boolean metric = words.units() == UnitSystem.METRIC;
    double unit = metric ? 1 / 0.0254 : 12;
    double[] steps =
        metric
            ? new double[] {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000}
            : new double[] {0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000};
    // Figures side by side read as one where the parts are too short for them.
    return Arrays.stream(steps)
            .filter(s -> Type.NOTE.width(barFigure(3 * s * unit)) + 2 <= s * unit * scale.perInch())
            .boxed()
            .min(Comparator.comparingDouble(s -> Math.abs(s * unit * scale.perInch() - 17)))
            .orElse(steps[steps.length - 1])
        * unit;
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
    if (words.units() == UnitSystem.METRIC) {
      double metres = inches * 0.0254;
      return metres < 1
          ? Math.round(metres * 1000) + " mm"
          : new java.math.BigDecimal(String.format(java.util.Locale.ROOT, "%.1f", metres))
                  .stripTrailingZeros()
                  .toPlainString()
              + " m";
    }
    return inches % 12 == 0 ? Math.round(inches / 12) + "′" : words.print(Length.inches(inches));
  }

  /** Which way north lies on the page. */
  private Point north() {
    return new Point(0, -1).turned(Math.toRadians(plan.north() - view.turn()));
  }

  /** The room of the whole mark, its middle amid. */
  private Point needleSize() {
    double reach = NEEDLE + LETTER + 2;
    return new Point(
        2 * Math.max(3.2, Math.abs(north().x()) * reach + 1),
        2 * Math.max(3.2, Math.abs(north().y()) * reach + 1));
  }

  /**
   * The north mark about its middle, {@code factor} times its full size; its letter stays as large.
   */
  private Mark needle(Point middle, double factor) {
    double half = NEEDLE * factor;
    double reach = half + LETTER;
    Point up = north();
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
            Type.TABLE_NUMBER.at(letter.x(), letter.y(), words.say("sheet.north"), Anchor.MIDDLE)));
  }
}
