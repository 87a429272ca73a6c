package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Table;
import org.jointwright.sheet.block.Type;

/** The tables of the form sheet: sides and what holds them, and what is dug for each slab. */
final class FormRows {
  /** The narrowest and the widest table of sides, millimetres. */
  static final double THINNEST = 78;

  static final double WIDEST = 83.2;

  private static final double COLUMN_GAP = 1.5;

  private final Facts facts;

  FormRows(Facts facts) {
    this.facts = facts;
  }

  /** Every side, then the stops across slabs. */
  List<Table.Row> sides() {
    List<Table.Row> rows = new ArrayList<>();
    for (Tape tape : facts.lettering().tapes()) {
      rows.add(new Table.Row(tape.name(), List.of(facts.print(tape.length()), form(tape))));
    }
    for (Item item : facts.numbering().items()) {
      if (item.work() == Work.FORM && !isSide(item)) {
        Finder.Run run = java.util.Objects.requireNonNull(facts.runs().get(item.number()));
        Slab slab = facts.plan().slab(item.slab()).orElseThrow();
        String where =
            facts.say("set.between", facts.say(run.from()), facts.say(run.to()))
                + ", "
                + facts.say("forms.stop", facts.print(slab.thickness().inches()));
        rows.add(
            new Table.Row(
                String.valueOf(item.number()), List.of(facts.print(run.path().length()), where)));
      }
    }
    return rows;
  }

  private boolean isSide(Item item) {
    Point middle = item.path().middle();
    return facts.plan().slabs().stream()
        .anyMatch(s -> s.outline().ring().distance(middle) < Sides.ON);
  }

  /** What holds a side: a board as high as the thicker of two slabs, or what stands there. */
  private String form(Tape tape) {
    Point middle = tape.path().middle();
    double high = 0;
    int slabs = 0;
    Optional<Against> held = Optional.empty();
    for (Slab slab : facts.plan().slabs()) {
      for (EdgeSetting edge : at(slab, middle)) {
        slabs++;
        high = Math.max(high, slab.thickness().inches());
        if (edge.against() != Against.OPEN && edge.against() != Against.ASPHALT) {
          held = Optional.of(edge.against());
        }
      }
    }
    if (slabs < 2 && held.isPresent()) {
      return facts.say("forms.none", facts.say("against." + held.get().name()));
    }
    String board = facts.say(tape.isStraight() ? "forms.board" : "forms.bent", facts.print(high));
    return slabs < 2 ? board : board + ", " + facts.say("forms.between");
  }

  private static List<EdgeSetting> at(Slab slab, Point middle) {
    List<EdgeSetting> found = new ArrayList<>();
    edge(slab.outline().ring(), middle).ifPresent(i -> found.add(slab.edge(i)));
    for (Opening o : slab.openings()) {
      edge(o.outline().ring(), middle).ifPresent(i -> found.add(o.edge(i)));
    }
    return found;
  }

  private static Optional<Integer> edge(Ring ring, Point middle) {
    List<Edge> edges = ring.edges();
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).distance(middle) < Sides.ON) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** The table of the sides. */
  Table table(List<Table.Row> rows, double width) {
    String head = facts.say("forms.side");
    double number =
        Math.max(
            Type.NOTE.width(head),
            Table.BOX
                + 1.2
                + rows.stream()
                    .mapToDouble(r -> Type.TABLE_NUMBER.width(r.number()))
                    .max()
                    .orElse(0));
    double figures =
        rows.stream().mapToDouble(r -> Type.TABLE.width(r.cells().getFirst())).max().orElse(0);
    double words = number + 1.8 + figures + 2 * COLUMN_GAP;
    return new Table(
        "sides",
        List.of(head, facts.say("forms.long"), facts.say("forms.form")),
        List.of(
            new Table.Column(number, Anchor.END, number),
            new Table.Column(number + 1.8 + figures, Anchor.END, figures),
            new Table.Column(words, Anchor.START, width - words)),
        rows);
  }

  /** What is dug under the string for each slab: its thickness, its base, both together. */
  Table dig(double width) {
    List<String> heads =
        List.of(facts.say("forms.thick"), facts.say("forms.base"), facts.say("forms.dig"));
    List<List<String>> figures = new ArrayList<>();
    for (Slab s : facts.plan().slabs()) {
      figures.add(
          List.of(
              facts.print(s.thickness().inches()),
              facts.print(s.base().inches()),
              facts.dig(s.thickness(), s.base())));
    }
    double each =
        2
            + Math.max(
                heads.stream().mapToDouble(Type.NOTE::width).max().orElse(0),
                figures.stream()
                    .flatMap(List::stream)
                    .mapToDouble(Type.TABLE::width)
                    .max()
                    .orElse(0));
    double name = Table.BOX + 1.2;
    double room = width - 3 * each - name;
    List<Table.Row> rows = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      String slab = Lines.fitting(facts.plan().slabs().get(i).id(), Type.TABLE_NUMBER, room);
      rows.add(new Table.Row(slab, figures.get(i)));
    }
    List<Table.Column> columns =
        new ArrayList<>(List.of(new Table.Column(name, Anchor.START, room)));
    for (int i = 2; i >= 0; i--) {
      columns.add(new Table.Column(width - i * each, Anchor.END, each));
    }
    List<String> all = new ArrayList<>(List.of(facts.say("forms.slab")));
    all.addAll(heads);
    return new Table("dig", all, columns, rows);
  }
}
