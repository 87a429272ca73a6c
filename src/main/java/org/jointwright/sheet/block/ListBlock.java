package org.jointwright.sheet.block;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.shape.Point;

/**
 * A short list with a head: a label on the left of each row, a figure on the right.
 *
 * @param name its name
 * @param title its head
 * @param note what is said beside the head
 * @param large whether the figures are as large as those of the chains
 * @param rows its rows
 */
public record ListBlock(String name, String title, String note, boolean large, List<Row> rows)
    implements Block {
  private static final double HEAD = 7;
  private static final double LINE = 5.7;

  /** Copies the list. */
  public ListBlock {
    rows = List.copyOf(rows);
  }

  /** A row; the figure may be empty, and then the label may take two lines. */
  public record Row(String label, String figure) {}

  private Type figures() {
    return large ? Type.MARK : Type.TABLE;
  }

  private double pitch() {
    return large ? 8 : 5.9;
  }

  private double height(Row row) {
    return pitch() + (lines(row).size() - 1) * LINE;
  }

  private List<String> lines(Row row) {
    double room = WIDTH - (row.figure().isEmpty() ? 0 : figures().width(row.figure()) + 1);
    return Lines.wrap(row.label(), Type.TABLE, room);
  }

  /** The width that lists are broken to, millimetres. */
  public static final double WIDTH = 53.9;

  @Override
  public double height() {
    return HEAD + rows.stream().mapToDouble(this::height).sum() + 1;
  }

  @Override
  public List<Mark> at(double x, double y, double width) {
    List<Mark> marks = new ArrayList<>();
    double right = x + WIDTH;
    marks.add(Type.HEAD.at(x, y + 3.6, title, Anchor.START));
    marks.add(Type.NOTE.at(right, y + 3.6, note, Anchor.END));
    marks.add(Mark.Line.of(new Point(x, y + 5.5), new Point(right, y + 5.5), 0.5, Role.RULE));
    double base = y + HEAD + pitch() - 2.4;
    for (Row row : rows) {
      double at = base;
      for (String line : lines(row)) {
        marks.add(Type.TABLE.at(x, at, line, Anchor.START));
        at += LINE;
      }
      if (!row.figure().isEmpty()) {
        marks.add(figures().at(right, base, row.figure(), Anchor.END));
      }
      base += height(row);
    }
    return marks;
  }

  @Override
  public Split split(double height) {
    double used = HEAD + 1;
    int count = 0;
    while (count < rows.size() && used + height(rows.get(count)) <= height) {
      used += height(rows.get(count));
      count++;
    }
    if (count == rows.size()) {
      return new Split(List.of(this), List.of());
    }
    if (count == rows.size() - 1 && count > 2) {
      // A row alone on the next page would look forgotten.
      count--;
    }
    if (count < 2) {
      return new Split(List.of(), List.of(this));
    }
    return new Split(
        List.of(new ListBlock(name, title, note, large, rows.subList(0, count))),
        List.of(new ListBlock(name, title, note, large, rows.subList(count, rows.size()))));
  }
}
