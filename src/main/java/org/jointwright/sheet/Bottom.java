package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.How;
import org.jointwright.practice.JointDepth;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Table;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.page.Caution;

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

  /**
   * The highest table that stands under the plan, as a share of the paper: seven rows of letter.
   */
  private static final double HIGHEST = 0.231;

  private static final double GAP = 4;

  /** Between a table and the one under it, millimetres. */
  private static final double UNDER = 1;

  /** The widest table of joints to cut, millimetres. */
  private static final double WIDEST = 100;

  /** The narrowest table of joints to cut. */
  private static final double THINNEST = 76;

  /** The narrowest column of sentences beside tables, millimetres. */
  private static final double NARROWEST = 80;

  /** A table and where it stands. */
  record Placed(Table table, double x, double y, double width) {
    double low() {
      return y + table.height();
    }
  }

  /**
   * What stands under the plan.
   *
   * @param width how wide it may be, millimetres
   * @param paper how high the paper is, millimetres
   */
  static Bottom of(Facts facts, Schedule schedule, double width, double paper) {
    List<Table.Row> cut = schedule.rows(Work.CUT);
    List<Table.Row> form = schedule.rows(Work.FORM);
    List<Table.Row> set = schedule.setRows();
    List<Block> left = new ArrayList<>();
    List<Placed> narrow = placed(schedule, cut, form, set, width, Schedule.SET_WIDTH);
    List<Placed> wide = placed(schedule, cut, form, set, width, Schedule.setWidth(set));
    List<Placed> placed = low(wide) < low(narrow) ? wide : narrow;
    double setWidth = set.isEmpty() ? 0 : placed.getLast().width() + GAP;
    double x =
        placed.stream()
            .filter(p -> p.x() + p.width() < width - setWidth + 1e-9)
            .mapToDouble(p -> p.x() + p.width() + GAP)
            .max()
            .orElse(0);
    if (low(placed) > HIGHEST * paper) {
      // The plan needs the room more: the tables have a page of their own.
      placed = List.of();
      x = 0;
      if (!cut.isEmpty()) {
        left.add(schedule.table(Work.CUT, cut, Schedule.CUT_WIDTH));
      }
      if (!form.isEmpty()) {
        left.add(schedule.table(Work.FORM, form, Schedule.CUT_WIDTH));
      }
      if (!set.isEmpty()) {
        left.add(schedule.setTable(set, Schedule.SET_WIDTH));
      }
    }
    return texts(
        new Orders(facts).sentences(), cautions(facts), width, x, width - setWidth, placed, left);
  }

  /** The tables side by side, that of the filler last and as wide as is said. */
  private static List<Placed> placed(
      Schedule schedule,
      List<Table.Row> cut,
      List<Table.Row> form,
      List<Table.Row> set,
      double width,
      double setUsual) {
    // One table as long as there is room for it; never a second one for a row or two.
    int all = cut.size() + form.size();
    int tables = all <= 4 ? 1 : all <= 2 * MOST_ROWS || !set.isEmpty() ? 2 : 3;
    double setWidth = set.isEmpty() ? 0 : tables == 1 ? WIDEST : setUsual;
    while (tables > 1 && each(width, setWidth, tables) < THINNEST) {
      tables--;
    }
    double each = each(width, setWidth, tables);
    List<Placed> placed = new ArrayList<>();
    double x = 0;
    for (List<Table> column : columns(schedule, cut, form, tables, each)) {
      double y = 0;
      for (Table t : column) {
        placed.add(new Placed(t, x, y, each));
        y += t.height() + UNDER;
      }
      x += each + GAP;
    }
    if (!set.isEmpty()) {
      placed.add(new Placed(schedule.setTable(set, setWidth), width - setWidth, 0, setWidth));
    }
    return placed;
  }

  private static double each(double width, double setWidth, int tables) {
    return Math.min(WIDEST, (width - setWidth - tables * GAP) / tables);
  }

  /**
   * Joints to cut and joints to form in so many columns: each kind in its own where there are two,
   * else the one under the other where a column has both.
   */
  private static List<List<Table>> columns(
      Schedule schedule, List<Table.Row> cut, List<Table.Row> form, int columns, double width) {
    int all = cut.size() + form.size();
    boolean apart =
        columns == 2
            && !form.isEmpty()
            && !cut.isEmpty()
            && Math.max(cut.size(), form.size()) <= MOST_ROWS;
    int first = apart ? cut.size() : Math.max(1, (all + columns - 1) / columns);
    List<List<Table>> found = new ArrayList<>();
    for (int from = 0; from < all; ) {
      int to = Math.min(all, from + (from > 0 && apart ? form.size() : first));
      List<Table> column = new ArrayList<>();
      if (from < cut.size()) {
        column.add(schedule.table(Work.CUT, cut.subList(from, Math.min(to, cut.size())), width));
      }
      if (to > cut.size()) {
        int start = Math.max(0, from - cut.size());
        column.add(schedule.table(Work.FORM, form.subList(start, to - cut.size()), width));
      }
      found.add(column);
      from = to;
    }
    return found;
  }

  private static double low(List<Placed> placed) {
    return placed.stream().mapToDouble(Placed::low).max().orElse(0);
  }

  private static List<String> cautions(Facts facts) {
    List<Caution> fit = new ArrayList<>();
    if (facts.numbering().items().stream().anyMatch(i -> i.work() == Work.CUT && isSawn(i))) {
      fit.add(Caution.DUST);
    }
    fit.addAll(
        List.of(Caution.WET, Caution.DIGGING, Caution.TRAFFIC, Caution.LOADS, Caution.CODES));
    List<String> said = Caution.say(facts.words(), facts.plan(), fit.toArray(Caution[]::new));
    // One after the other in a line: the plan needs the room more.
    return List.of((facts.square() + " " + String.join(" ", said)).strip());
  }

  private static boolean isSawn(Item item) {
    return item.joints().getFirst().how().orElse(JointDepth.USUAL) != How.TOOLED;
  }

  /** The texts go where they cost the least height: below, between, or each under its tables. */
  static Bottom texts(
      List<String> orders,
      List<String> cautions,
      double width,
      double from,
      double to,
      List<Placed> placed,
      List<Block> left) {
    double high = low(placed);
    List<Texts> ways = new ArrayList<>();
    Texts below = new Texts(high).add(orders, Type.ORDER, 0, width);
    ways.add(below.add(cautions, Type.NOTE, 0, width));
    if (to - from >= NARROWEST && !placed.isEmpty()) {
      Texts beside = new Texts(0).add(orders, Type.ORDER, from, to - from);
      ways.add(beside.add(cautions, Type.NOTE, from, to - from));
    }
    if (placed.size() > 1) {
      Placed last = placed.getLast();
      List<Placed> before = placed.stream().filter(p -> p.x() < last.x()).toList();
      if (!before.isEmpty()) {
        Texts under = new Texts(low(before)).add(orders, Type.ORDER, 0, last.x() - GAP);
        Texts right = new Texts(last.low()).add(cautions, Type.NOTE, last.x(), last.width());
        ways.add(under.and(right));
      }
    }
    Texts best = ways.stream().min(Comparator.comparingDouble(Texts::low)).orElseThrow();
    return new Bottom(placed, left, best.words(), Math.max(high, best.low() + 1.7));
  }

  /** Sentences in lines, one under the other. */
  private record Texts(List<Mark.Words> words, double low) {
    Texts(double top) {
      this(List.of(), top);
    }

    Texts add(List<String> sentences, Type type, double x, double width) {
      List<Mark.Words> more = new ArrayList<>(words);
      double pitch = type == Type.ORDER ? 5.6 : 4.8;
      double y = low + 0.4;
      for (String sentence : sentences) {
        for (String line : Lines.wrap(sentence, type, width)) {
          y += pitch;
          more.add(type.at(x, y - 1.2, line, Anchor.START));
        }
      }
      return new Texts(more, y);
    }

    Texts and(Texts other) {
      List<Mark.Words> both = new ArrayList<>(words);
      both.addAll(other.words());
      return new Texts(both, Math.max(low, other.low()));
    }
  }

  List<Mark> at(double x, double y) {
    List<Mark> marks = new ArrayList<>();
    for (Placed p : tables) {
      marks.add(
          new Mark.Group(
              p.table().name() + "-joints", "", p.table().at(x + p.x(), y + p.y(), p.width())));
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
