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
 * @param texts the orders and cautions, placed from the upper left corner
 * @param height how high it all is, millimetres
 */
record Bottom(List<Placed> tables, List<Block> left, List<Mark.Words> texts, double height) {
  private static final int MOST_ROWS = 6;

  /** The highest table that stands under the plan, millimetres: seven rows. */
  private static final double HIGHEST = 48.5;

  private static final double GAP = 4;

  /** The widest table of joints to cut, millimetres. */
  private static final double WIDEST = 100;

  /** The narrowest column of sentences beside tables, millimetres. */
  private static final double NARROWEST = 80;

  /** A table and where it stands. */
  record Placed(Table table, double x, double width) {}

  static Bottom of(Facts facts, Schedule schedule, double width) {
    List<Table.Row> cut = schedule.cutRows();
    List<Table.Row> set = schedule.setRows();
    List<Placed> placed = new ArrayList<>();
    List<Block> left = new ArrayList<>();
    double setWidth = set.isEmpty() ? 0 : Schedule.SET_WIDTH;
    // One table as long as there is room for it; never a second one for a row or two.
    int tables = cut.size() <= 4 ? 1 : cut.size() <= 2 * MOST_ROWS || !set.isEmpty() ? 2 : 3;
    int rows = Math.max(1, (cut.size() + tables - 1) / tables);
    double each = Math.min(WIDEST, (width - setWidth - tables * GAP) / tables);
    double x = 0;
    for (int from = 0; from < cut.size(); from += rows) {
      Table t = schedule.cutTable(cut.subList(from, Math.min(cut.size(), from + rows)), each);
      placed.add(new Placed(t, x, each));
      x += each + GAP;
    }
    if (!set.isEmpty()) {
      placed.add(new Placed(schedule.setTable(set), width - setWidth, setWidth));
    }
    if (placed.stream().anyMatch(p -> p.table().height() > HIGHEST)) {
      // The plan needs the room more: the tables have a page of their own.
      placed.clear();
      x = 0;
      if (!cut.isEmpty()) {
        left.add(schedule.cutTable(cut, Schedule.CUT_WIDTH));
      }
      if (!set.isEmpty()) {
        left.add(schedule.setTable(set));
      }
    }
    return texts(facts, width, x, width - setWidth - (set.isEmpty() ? 0 : GAP), placed, left);
  }

  /** The texts go between the tables where that saves height, else below them. */
  private static Bottom texts(
      Facts facts, double width, double from, double to, List<Placed> placed, List<Block> left) {
    double high = placed.stream().mapToDouble(p -> p.table().height()).max().orElse(0);
    Texts below = Texts.of(facts, 0, high, width);
    if (to - from >= NARROWEST && !placed.isEmpty()) {
      Texts beside = Texts.of(facts, from, 0, to - from);
      if (Math.max(high, beside.low()) < below.low()) {
        return new Bottom(placed, left, beside.words(), Math.max(high, beside.low()));
      }
    }
    return new Bottom(placed, left, below.words(), below.low());
  }

  /** Orders and cautions in lines. */
  private record Texts(List<Mark.Words> words, double low) {
    static Texts of(Facts facts, double x, double top, double width) {
      List<Mark.Words> words = new ArrayList<>();
      double y = top + 4.6;
      for (String sentence : new Orders(facts).sentences()) {
        for (String line : Lines.wrap(sentence, Type.ORDER, width)) {
          words.add(Type.ORDER.at(x, y, line, Anchor.START));
          y += 5.6;
        }
      }
      for (String key : List.of("caution.silica", "caution.other")) {
        for (String line : Lines.wrap(facts.say(key), Type.NOTE, width)) {
          words.add(Type.NOTE.at(x, y, line, Anchor.START));
          y += 4.8;
        }
      }
      return new Texts(words, y - 2.2);
    }
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
              w.at().plus(new org.jointwright.shape.Point(x, y)),
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
