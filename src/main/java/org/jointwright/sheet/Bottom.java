package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;

/**
 * What stands under the plan: two tables of joints to cut and one of filler to set where they fit,
 * the orders and the cautions.
 *
 * @param tables the tables that stand here, with where they stand and how wide they are
 * @param left the tables that found no room
 * @param texts the orders and cautions, placed from the top of the texts
 * @param tableHeight how high the tables are, millimetres
 * @param textHeight how high the texts are, millimetres
 */
record Bottom(
    List<Placed> tables,
    List<Block> left,
    List<Mark.Words> texts,
    double tableHeight,
    double textHeight) {
  private static final int MOST_ROWS = 6;
  private static final int MOST_SET_ROWS = 7;
  private static final double GAP = 5;

  /** A table and where it stands. */
  record Placed(Table table, double x, double width) {}

  static Bottom of(Facts facts, Schedule schedule, double width) {
    List<Table.Row> cut = schedule.cutRows();
    List<Table.Row> set = schedule.setRows();
    List<Placed> placed = new ArrayList<>();
    List<Block> left = new ArrayList<>();
    int columns = set.isEmpty() ? 3 : 2;
    int each = Math.max(1, (cut.size() + columns - 1) / columns);
    double x = 0;
    if (cut.size() <= columns * MOST_ROWS && set.size() <= MOST_SET_ROWS) {
      // One table as long as there is room for it; never a second one for a row or two.
      int rows = cut.size() <= 4 ? cut.size() : each;
      for (int from = 0; from < cut.size(); from += rows) {
        Table t = schedule.cutTable(cut.subList(from, Math.min(cut.size(), from + rows)));
        placed.add(new Placed(t, x, Schedule.CUT_WIDTH));
        x += Schedule.CUT_WIDTH + GAP;
      }
      if (!set.isEmpty()) {
        placed.add(
            new Placed(schedule.setTable(set), width - Schedule.SET_WIDTH, Schedule.SET_WIDTH));
      }
    } else {
      left.add(schedule.cutTable(cut));
      if (!set.isEmpty()) {
        left.add(schedule.setTable(set));
      }
    }
    double high = placed.stream().mapToDouble(p -> p.table().height()).max().orElse(0);
    return texts(facts, width, placed, left, high);
  }

  private static Bottom texts(
      Facts facts, double width, List<Placed> placed, List<Block> left, double high) {
    List<Mark.Words> words = new ArrayList<>();
    double y = 4.6;
    for (String sentence : new Orders(facts).sentences()) {
      for (String line : Lines.wrap(sentence, Type.ORDER, width)) {
        words.add(Type.ORDER.at(0, y, line, Anchor.START));
        y += 5.6;
      }
    }
    for (String key : List.of("caution.silica", "caution.other")) {
      for (String line : Lines.wrap(facts.say(key), Type.NOTE, width)) {
        words.add(Type.NOTE.at(0, y, line, Anchor.START));
        y += 4.8;
      }
    }
    return new Bottom(placed, left, words, high, y - 3.2);
  }

  double height() {
    return tableHeight + textHeight + 1;
  }

  List<Mark> at(double x, double y) {
    List<Mark> marks = new ArrayList<>();
    for (Placed p : tables) {
      marks.add(
          new Mark.Group(p.table().name() + "-joints", "", p.table().at(x + p.x(), y, p.width())));
    }
    List<Mark> texts = new ArrayList<>();
    for (Mark.Words w : this.texts) {
      texts.add(
          new Mark.Words(
              w.at().plus(new org.jointwright.shape.Point(x, y + tableHeight)),
              w.text(),
              w.size(),
              w.weight(),
              w.anchor(),
              w.angle(),
              w.fraction(),
              w.role()));
    }
    marks.add(new Mark.Group("orders", "", texts));
    return marks;
  }
}
