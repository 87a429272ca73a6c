package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.ListBlock;
import org.jointwright.sheet.block.Type;

/** What stands in the column beside the plan. */
final class ColumnBlocks {
  /** A bend of a side that is farther off the string than this is told; inches. */
  private static final double BEND = 1.0 / 32;

  /** More diagonals than this are told in figures like those of the tables. */
  private static final int MOST_LARGE = 8;

  private final Facts facts;
  private final double turn;
  private final boolean all;

  /**
   * @param turn how the plan lies, degrees
   * @param all whether sides without marks are listed too
   */
  ColumnBlocks(Facts facts, double turn, boolean all) {
    this.facts = facts;
    this.turn = turn;
    this.all = all;
  }

  /**
   * The blocks in their order.
   *
   * @param unplaced the sides that found no place on the plan
   * @param large whether a few diagonals are told in large figures
   * @param tees whether it is listed where joints are met by others
   */
  List<Block> of(List<Chains.Chain> unplaced, boolean large, boolean tees) {
    List<Block> blocks = new ArrayList<>();
    for (Item item : facts.numbering().items()) {
      if (item.work() == Work.BOX_OUT) {
        blocks.add(new BoxOutBlock(facts, item, turn));
      }
    }
    addList(blocks, "diagonals", "ties", ties(), large);
    addList(blocks, "arcs", "arcs", arcs(), false);
    addList(blocks, "bends", "bends", bends(), false);
    addList(blocks, "sides", "sides", sides(unplaced), false);
    if (tees) {
      blocks.addAll(tees());
    }
    return blocks;
  }

  /** The list of where joints are met by others; none where no joint is. */
  List<Block> tees() {
    List<Block> blocks = new ArrayList<>();
    addList(blocks, "tees", "tees", onJoints(), false);
    return blocks;
  }

  private void addList(
      List<Block> blocks, String name, String key, List<ListBlock.Row> rows, boolean large) {
    if (!rows.isEmpty()) {
      String title = facts.say(key + ".title");
      String note = facts.say(key + ".note");
      blocks.add(new ListBlock(name, title, note, large && rows.size() <= MOST_LARGE, rows));
    }
  }

  /** Diagonals; two of one length share a row. */
  private List<ListBlock.Row> ties() {
    Map<String, List<String>> byLength = new LinkedHashMap<>();
    for (Ties.Tie tie : facts.ties().pulls()) {
      byLength
          .computeIfAbsent(facts.print(tie.length()), k -> new ArrayList<>())
          .add(tie.from().letter() + "–" + tie.to().letter());
    }
    return byLength.entrySet().stream()
        .map(e -> new ListBlock.Row(String.join(", ", e.getValue()), e.getKey()))
        .toList();
  }

  private List<ListBlock.Row> arcs() {
    List<ListBlock.Row> rows = new ArrayList<>();
    for (Tape t : facts.lettering().tapes()) {
      if (t.path().edges().size() == 1 && t.path().edges().getFirst() instanceof Arc arc) {
        double bow = Schedule.bow(arc);
        String side = facts.say(bow >= 0 ? "arcs.left" : "arcs.right", facts.fine(Math.abs(bow)));
        String chord = facts.fine(arc.start().distance(arc.end()));
        rows.add(
            new ListBlock.Row(
                facts.say("arcs.row", t.name(), facts.fine(arc.radius()), chord, side), ""));
      }
    }
    return rows;
  }

  /** Corners told from a string, and bends of straight sides that stand off theirs. */
  private List<ListBlock.Row> bends() {
    List<ListBlock.Row> rows = new ArrayList<>();
    for (Ties.Offset o : facts.ties().offsets()) {
      rows.add(
          new ListBlock.Row(
              facts.say("bends.corner", o.corner().letter(), facts.off(o.where())), ""));
    }
    for (Tape t : facts.lettering().tapes()) {
      if (!t.isStraight()) {
        continue;
      }
      Point u = t.to().at().minus(t.from().at()).unit();
      for (Edge e : t.path().edges().subList(1, t.path().edges().size())) {
        double off = u.cross(e.start().minus(t.from().at()));
        if (Math.abs(off) > BEND) {
          String key = off >= 0 ? "at.left" : "at.right";
          double along = u.dot(e.start().minus(t.from().at()));
          rows.add(
              new ListBlock.Row(
                  facts.say(key, facts.print(along), t.name(), facts.fine(Math.abs(off))), ""));
        }
      }
    }
    return rows;
  }

  /**
   * The length of every side, with the corners that stand on it; where the side's chain found no
   * place on the plan, with all its marks. Sides without marks stand two in a row.
   */
  private List<ListBlock.Row> sides(List<Chains.Chain> unplaced) {
    List<ListBlock.Row> rows = new ArrayList<>();
    String waiting = "";
    for (Chains.Chain chain : facts.chains()) {
      List<Chains.Stop> inner = chain.stops().subList(0, chain.stops().size() - 1);
      String marks =
          inner.stream()
              .filter(s -> !s.corner().isEmpty() || unplaced.contains(chain))
              .map(this::stop)
              .collect(Collectors.joining(", "));
      if (marks.isEmpty() && !all) {
        continue;
      }
      String name = chain.tape().name();
      String total = facts.print(chain.total());
      String text = facts.say("sides.plain", name, total);
      if (!marks.isEmpty()) {
        rows.add(new ListBlock.Row(facts.say("sides.marked", name, total, marks), ""));
      } else if (Type.TABLE.width(text) > (ListBlock.WIDTH - 2) / 2) {
        rows.add(new ListBlock.Row(text, ""));
      } else if (waiting.isEmpty()) {
        waiting = text;
      } else {
        rows.add(new ListBlock.Row(waiting, text));
        waiting = "";
      }
    }
    if (!waiting.isEmpty()) {
      rows.add(new ListBlock.Row(waiting, ""));
    }
    rows.sort(Comparator.comparing(r -> r.figure().isEmpty()));
    return rows;
  }

  /** Where others meet a joint, so that one tape along it marks them all. */
  private List<ListBlock.Row> onJoints() {
    Map<Integer, Set<Double>> onJoint = new TreeMap<>();
    for (Finder.Run run : facts.runs().values()) {
      for (Whereabouts end : List.of(run.from(), run.to())) {
        if (end instanceof Whereabouts.OnJoint on
            && facts.runs().containsKey(on.number())
            && !facts.isAtEnd(on)) {
          onJoint.computeIfAbsent(on.number(), n -> new TreeSet<>()).add(on.along());
        }
      }
    }
    List<ListBlock.Row> rows = new ArrayList<>();
    onJoint.forEach(
        (number, along) -> {
          String marks =
              Chains.apart(along).stream().map(facts::print).collect(Collectors.joining(", "));
          rows.add(new ListBlock.Row(facts.say("tees.row", String.valueOf(number), marks), ""));
        });
    return rows;
  }

  private String stop(Chains.Stop s) {
    return s.corner().isEmpty()
        ? facts.print(s.along())
        : facts.say("sides.stop", s.corner(), facts.print(s.along()));
  }
}
