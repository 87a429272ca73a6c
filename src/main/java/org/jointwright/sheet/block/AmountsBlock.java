package org.jointwright.sheet.block;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.shape.Point;

/**
 * Lines of an order that belong together: what it is on the left, how much on the right, and under
 * each line, where wanted, how it was worked out.
 *
 * @param name its name
 * @param title its head
 * @param again its head where it goes on in another column
 * @param wide how wide it is, millimetres
 * @param rows its rows
 */
public record AmountsBlock(String name, String title, String again, double wide, List<Row> rows)
    implements Block {
  private static final double HEAD = 7;
  private static final double LINE = 5.7;
  private static final double STEP = 4.4;
  private static final double AFTER = 1.9;
  private static final double GAP = 3;

  /** Copies the list. */
  public AmountsBlock {
    rows = List.copyOf(rows);
  }

  /**
   * A row.
   *
   * @param label what it is
   * @param amount how much
   * @param steps what is said under it, small
   */
  public record Row(String label, String amount, List<String> steps) {
    /** Copies the list. */
    public Row {
      steps = List.copyOf(steps);
    }
  }

  private List<String> lines(Row row) {
    return Lines.wrap(row.label(), Type.TABLE, wide - Type.NAME.width(row.amount()) - GAP);
  }

  private List<String> steps(Row row) {
    List<String> lines = new ArrayList<>();
    row.steps().forEach(s -> lines.addAll(Lines.wrap(s, Type.NOTE, wide - 3)));
    return lines;
  }

  private double height(Row row) {
    return lines(row).size() * LINE + steps(row).size() * STEP + AFTER;
  }

  @Override
  public double height() {
    return HEAD + rows.stream().mapToDouble(this::height).sum();
  }

  @Override
  public List<Mark> at(double x, double y, double width) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Type.HEAD.at(x, y + 3.6, title, Anchor.START));
    marks.add(Mark.Line.of(new Point(x, y + 5.5), new Point(x + wide, y + 5.5), 0.5, Role.RULE));
    double base = y + HEAD;
    for (Row row : rows) {
      double at = base + LINE - 0.4;
      marks.add(Type.NAME.at(x + wide, at, row.amount(), Anchor.END));
      for (String line : lines(row)) {
        marks.add(Type.TABLE.at(x, at, line, Anchor.START));
        at += LINE;
      }
      at -= LINE - STEP - 0.6;
      for (String step : steps(row)) {
        marks.add(Type.NOTE.at(x + 3, at, step, Anchor.START));
        at += STEP;
      }
      base += height(row);
      marks.add(
          Mark.Line.of(new Point(x, base - 0.2), new Point(x + wide, base - 0.2), 0.18, Role.RULE));
    }
    return marks;
  }

  @Override
  public Split split(double height) {
    double used = HEAD;
    int count = 0;
    while (count < rows.size() && used + height(rows.get(count)) <= height) {
      used += height(rows.get(count));
      count++;
    }
    if (count == rows.size()) {
      return new Split(List.of(this), List.of());
    }
    if (count == rows.size() - 1 && count > 1) {
      // A row alone in the next column would look forgotten.
      count--;
    }
    return count == 0
        ? new Split(List.of(), List.of(this))
        : new Split(
            List.of(new AmountsBlock(name, title, again, wide, rows.subList(0, count))),
            List.of(new AmountsBlock(name, again, again, wide, rows.subList(count, rows.size()))));
  }
}
