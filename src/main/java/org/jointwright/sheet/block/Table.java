package org.jointwright.sheet.block;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * A table of joints: a box to tick, the number, two columns of words, a length or two.
 *
 * @param name its name
 * @param heads the heads of the columns, from the number on
 * @param columns where the columns stand, millimetres from the left
 * @param remark what holds for all its rows, said left of the last head; may be empty
 * @param rows its rows
 */
public record Table(
    String name, List<String> heads, List<Column> columns, String remark, List<Row> rows)
    implements Block {
  /** From one row's baseline to the next. */
  public static final double PITCH = 5.9;

  private static final double SECOND_LINE = 5.6;
  private static final double HEAD = 5.6;

  /** Between the remark and the last head, millimetres. */
  private static final double BESIDE = 3;

  /** How large the box to tick is, millimetres. */
  public static final double BOX = 3.1;

  /** Copies the lists. */
  public Table {
    heads = List.copyOf(heads);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** A table without a remark. */
  public Table(String name, List<String> heads, List<Column> columns, List<Row> rows) {
    this(name, heads, columns, "", rows);
  }

  /**
   * A column.
   *
   * @param at where its texts start or end
   * @param anchor which of the two
   * @param width how wide a text may be
   */
  public record Column(double at, Anchor anchor, double width) {}

  /** A row: its number and the texts of the columns after it. */
  public record Row(String number, List<String> cells) {
    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  @Override
  public double height() {
    return HEAD + rows.stream().mapToDouble(this::height).sum();
  }

  private double height(Row row) {
    int lines = 1;
    for (int i = 0; i < row.cells().size(); i++) {
      lines = Math.max(lines, lines(row, i).size());
    }
    return PITCH + (lines - 1) * SECOND_LINE;
  }

  private List<String> lines(Row row, int i) {
    return Lines.wrap(row.cells().get(i), Type.TABLE, columns.get(i + 1).width());
  }

  @Override
  public List<Mark> at(double x, double y, double width) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      Column c = columns.get(i);
      marks.add(Type.NOTE.at(x + c.at(), y + 3.2, heads.get(i), c.anchor()));
    }
    if (!remark.isEmpty()) {
      double right = x + columns.getLast().at() - Type.NOTE.width(heads.getLast()) - BESIDE;
      marks.add(Type.NOTE.at(right, y + 3.2, remark, Anchor.END));
    }
    double top = y + HEAD - 0.8;
    marks.add(rule(x, top, wide(), 0.5));
    for (int r = 0; r < rows.size(); r++) {
      Row row = rows.get(r);
      marks.add(new Mark.Group(name + "-" + row.number(), "", cells(row, x, top)));
      top += height(row);
      if (r < rows.size() - 1) {
        marks.add(rule(x, top, wide(), 0.18));
      }
    }
    return marks;
  }

  /** How wide its columns make it, however wide the room is. */
  private double wide() {
    Column last = columns.getLast();
    return last.anchor() == Anchor.END ? last.at() : last.at() + last.width();
  }

  private List<Mark> cells(Row row, double x, double top) {
    List<Mark> marks = new ArrayList<>();
    double base = top + 4.7;
    Column number = columns.getFirst();
    var box = Rings.box(x, base - BOX + 0.05, BOX, BOX);
    marks.add(Mark.Line.of(new Path(box.edges()), 0.35, Role.RULE));
    marks.add(Type.TABLE_NUMBER.at(x + number.at(), base, row.number(), number.anchor()));
    for (int i = 0; i < row.cells().size(); i++) {
      Column c = columns.get(i + 1);
      double at = base;
      for (String line : lines(row, i)) {
        marks.add(Type.TABLE.at(x + c.at(), at, line, c.anchor()));
        at += SECOND_LINE;
      }
    }
    return marks;
  }

  private static Mark rule(double x, double y, double width, double weight) {
    return Mark.Line.of(new Point(x, y), new Point(x + width, y), weight, Role.RULE);
  }

  @Override
  public Split split(double height) {
    int count = 0;
    double used = HEAD;
    while (count < rows.size() && used + height(rows.get(count)) <= height) {
      used += height(rows.get(count));
      count++;
    }
    if (count == rows.size()) {
      return new Split(List.of(this), List.of());
    }
    if (count < Math.min(2, rows.size())) {
      return new Split(List.of(), List.of(this));
    }
    return new Split(
        List.of(new Table(name, heads, columns, remark, rows.subList(0, count))),
        List.of(new Table(name, heads, columns, remark, rows.subList(count, rows.size()))));
  }
}
