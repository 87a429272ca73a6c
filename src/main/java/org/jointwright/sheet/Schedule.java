package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.joint.FillerWidth;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.Against;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.practice.Filler;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Table;
import org.jointwright.sheet.block.Type;

/** The tables of the joints. */
final class Schedule {
  /** How wide a table of joints to cut is, millimetres. */
  static final double CUT_WIDTH = 83.2;

  /** How wide the table of filler to set is, millimetres. */
  static final double SET_WIDTH = 79.4;

  /** How wide it is at most, where its words take more. */
  private static final double WIDE_SET = 92;

  private static final double COLUMN_GAP = 1.5;

  private final Facts facts;

  Schedule(Facts facts) {
    this.facts = facts;
  }

  /**
   * The joints to cut or those to form, where a pour ends; empty where there are none.
   *
   * @param work which of the two
   */
  List<Table.Row> rows(Work work) {
    List<Table.Row> rows = new ArrayList<>();
    for (Item item : facts.numbering().items()) {
      if (item.work() == work) {
        Finder.Run run = run(item);
        String to = facts.say(run.to()) + bow(run);
        rows.add(
            new Table.Row(
                String.valueOf(item.number()),
                List.of(facts.say(run.from()), to, facts.print(run.path().length()))));
      }
    }
    return rows;
  }

  private Finder.Run run(Item item) {
    return java.util.Objects.requireNonNull(facts.runs().get(item.number()));
  }

  /** What makes an arc of the string from end to end: how far it bows at its middle. */
  private String bow(Finder.Run run) {
    if (run.path().edges().size() == 1 && run.path().edges().getFirst() instanceof Arc arc) {
      double bow = bow(arc);
      return " " + facts.say(bow >= 0 ? "bow.left" : "bow.right", facts.print(Math.abs(bow)));
    }
    return "";
  }

  /** How far an arc stands off the middle of its chord, to the left as it runs; inches. */
  static double bow(Arc arc) {
    Point chord = arc.end().minus(arc.start());
    return chord.unit().cross(arc.middle().minus(arc.start()));
  }

  /** The table of joints to cut, or that of joints to form. */
  Table table(Work work, List<Table.Row> rows, double width) {
    String head = facts.say(work == Work.FORM ? "form.number" : "cut.number");
    return new Table(
        work == Work.FORM ? "form" : "cut",
        List.of(head, facts.say("cut.from"), facts.say("cut.to"), facts.say("cut.length")),
        columns(head, rows, width, false),
        work == Work.CUT ? CutSize.remark(items(rows), facts) : "",
        rows);
  }

  /** The filler along edges, then that of the box-outs. */
  List<Table.Row> setRows() {
    List<Table.Row> rows = new ArrayList<>();
    for (Item item : facts.numbering().items()) {
      if (item.work() == Work.SET || item.work() == Work.BOX_OUT) {
        rows.add(setRow(item));
      }
    }
    return rows;
  }

  /** How long the filler of a number is, inches. */
  private static double length(Item item) {
    return item.joints().stream().mapToDouble(j -> j.path().length()).sum();
  }

  /**
   * What the strip of a number is like: as wide as it is sold, as high as the slab is said to be.
   */
  private String strip(Item item, Slab slab) {
    double width =
        item.joints().stream()
            .findFirst()
            .map(j -> FillerWidth.of(j, slab))
            .orElse(Filler.WIDTH.value().inches());
    return facts.say("set.strip.size", facts.fine(width), facts.print(slab.thickness().inches()));
  }

  private Table.Row setRow(Item item) {
    Slab slab = facts.plan().slab(item.slab()).orElseThrow();
    String length = facts.print(length(item));
    String strip = strip(item, slab);
    String where =
        item.work() == Work.BOX_OUT
            ? facts.say("set.boxOut", facts.boxedOut(item))
            : along(item, slab);
    return new Table.Row(String.valueOf(item.number()), List.of(where, length, strip));
  }

  /** From corner to corner, or from mark to mark, and what it is set against. */
  private String along(Item item, Slab slab) {
    Finder.Run run = run(item);
    String beside = beside(item.joints().getFirst(), slab);
    if (run.from() instanceof Whereabouts.AtCorner a && run.to() instanceof Whereabouts.AtCorner) {
      Optional<Tape> whole =
          facts.lettering().tapes().stream().filter(t -> isWhole(t, run.path())).findFirst();
      if (whole.isPresent()) {
        return (whole.get().name() + " " + beside).strip();
      }
      StringBuilder letters = new StringBuilder(a.corner().letter());
      List<Edge> edges = run.path().edges();
      for (int i = 0; i < edges.size(); i++) {
        facts
            .lettering()
            .cornerAt(edges.get(i).end())
            .ifPresent(c -> letters.append('–').append(c.letter()));
      }
      return (letters + " " + beside).strip();
    }
    return (facts.say("set.between", facts.say(run.from()), facts.say(run.to())) + " " + beside)
        .strip();
  }

  /** Whether a path runs along the whole of a tape and nowhere else. */
  private static boolean isWhole(Tape tape, Path path) {
    return Math.abs(tape.length() - path.length()) < Sides.ON
        && path.edges().stream().allMatch(e -> tape.carries(e.at(0.5), Sides.ON));
  }

  private String beside(Joint joint, Slab slab) {
    Point middle = joint.path().middle();
    List<Edge> edges = slab.outline().ring().edges();
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).distance(middle) < Sides.ON && slab.edge(i).against() != Against.OPEN) {
        return facts.say("against." + slab.edge(i).against().name());
      }
    }
    return "";
  }

  /** How wide the table of filler stands where it need not be broken, millimetres. */
  static double setWidth(List<Table.Row> rows) {
    double words = Table.BOX + 1.2 + Type.TABLE_NUMBER.width("88") + 1.8;
    double whole = words + widest(rows, 0) + widest(rows, 1) + widest(rows, 2) + 2 * COLUMN_GAP;
    return Math.clamp(whole, SET_WIDTH, WIDE_SET);
  }

  Table setTable(List<Table.Row> rows, double width) {
    String head = facts.say("set.number");
    return new Table(
        "set",
        List.of(head, facts.say("set.where"), facts.say("set.length"), facts.say("set.strip")),
        columns(head, rows, width, true),
        rows);
  }

  private List<Item> items(List<Table.Row> rows) {
    return rows.stream()
        .map(r -> facts.numbering().items().get(Integer.parseInt(r.number()) - 1))
        .toList();
  }

  /**
   * The columns as wide as their figures ask; the words share the rest.
   *
   * @param head what stands over the numbers
   * @param two whether two columns of figures stand at the end instead of one
   */
  private static List<Table.Column> columns(
      String head, List<Table.Row> rows, double width, boolean two) {
    double figures =
        rows.stream().mapToDouble(r -> Type.TABLE_NUMBER.width(r.number())).max().orElse(0);
    double number = Math.max(Type.NOTE.width(head), Table.BOX + 1.2 + figures);
    double last = widest(rows, 2);
    double words = number + 1.8;
    if (two) {
      double length = widest(rows, 1);
      double all = width - words - length - 2 * COLUMN_GAP;
      // What the strip is like goes on in a second line before a place must be broken in a word.
      double strip = Math.clamp(all - longestWord(rows, 0), longestWord(rows, 2), last);
      double room = all - strip;
      return List.of(
          new Table.Column(number, Anchor.END, number),
          new Table.Column(words, Anchor.START, room),
          new Table.Column(width - strip - COLUMN_GAP, Anchor.END, length),
          new Table.Column(width, Anchor.END, strip));
    }
    double room = (width - words - last - 2 * COLUMN_GAP) / 2;
    return List.of(
        new Table.Column(number, Anchor.END, number),
        new Table.Column(words, Anchor.START, room),
        new Table.Column(words + room + COLUMN_GAP, Anchor.START, room),
        new Table.Column(width, Anchor.END, last));
  }

  private static double longestWord(List<Table.Row> rows, int cell) {
    return rows.stream()
        .flatMap(r -> Lines.wrap(r.cells().get(cell), Type.TABLE, 0).stream())
        .mapToDouble(Type.TABLE::width)
        .max()
        .orElse(0);
  }

  private static double widest(List<Table.Row> rows, int cell) {
    return rows.stream().mapToDouble(r -> Type.TABLE.width(r.cells().get(cell))).max().orElse(0);
  }
}
