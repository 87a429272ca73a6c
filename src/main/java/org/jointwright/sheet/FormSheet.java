package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.FormWork;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.Table;
import org.jointwright.sheet.page.Caution;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.takeoff.Item;
import org.jointwright.takeoff.Line;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.takeoff.words.OrderWords;

/**
 * The form sheet: what is set up before there is any concrete. Every side with its length and what
 * holds it, check diagonals, stops, box-outs, and what is dug under the string; joints that are cut
 * are left out.
 */
public final class FormSheet {
  private static final double GAP = 4;

  /** The highest table that stands under the plan, as a share of the paper. */
  private static final double HIGHEST = 0.23;

  private final Facts facts;
  private final Takeoff takeoff;
  private final FormRows rows;

  private FormSheet(Facts facts, Takeoff takeoff) {
    this.facts = facts;
    this.takeoff = takeoff;
    this.rows = new FormRows(facts);
  }

  /** The form sheet for a layout and what it takes. */
  public static Sheet sheet(Layout layout, Takeoff takeoff, SheetOptions options) {
    FormSheet sheet = new FormSheet(formed(Facts.of(layout, options)), takeoff);
    return new PlanSheet(sheet.facts, "forms", false, true, sheet::under)
        .on(options.paper().laidOut());
  }

  /** What a cut sheet tells, without all that is cut; numbers stay as they are there. */
  private static Facts formed(Facts all) {
    Plan plan = all.plan();
    Plan bare =
        plan.withSlabs(
            plan.slabs().stream()
                .map(
                    s ->
                        s.withLaid(
                            s.joints().stream()
                                .filter(j -> j.kind() != JointKind.CONTRACTION)
                                .toList(),
                            s.boxOuts()))
                .toList());
    Numbering numbering =
        new Numbering(
            all.numbering().items().stream()
                .filter(i -> i.work() == Work.FORM || i.work() == Work.BOX_OUT)
                .toList());
    Map<Integer, Finder.Run> runs = new HashMap<>(all.runs());
    runs.keySet().retainAll(numbering.items().stream().map(Numbering.Item::number).toList());
    return new Facts(
        Layouts.of(bare),
        all.words(),
        all.lettering(),
        numbering,
        runs,
        Chains.of(all.lettering(), runs, numbering),
        all.ties(),
        all.open(),
        all.scales());
  }

  private Bottom under(double width, double paper) {
    double digWidth = Math.min(92, (width - GAP) / 2);
    Table dig = rows.dig(digWidth);
    double sides = width - digWidth - GAP;
    int count = sides > 2 * FormRows.THINNEST + GAP ? 2 : 1;
    double each = Math.min(FormRows.WIDEST, (sides - (count - 1) * GAP) / count);
    List<Table.Row> all = rows.sides();
    int first = (all.size() + count - 1) / count;
    List<Bottom.Placed> placed = new ArrayList<>();
    double x = 0;
    for (int from = 0; from < all.size(); from += first) {
      List<Table.Row> some = all.subList(from, Math.min(all.size(), from + first));
      placed.add(new Bottom.Placed(rows.table(some, each), x, 0, each));
      x += each + GAP;
    }
    placed.add(new Bottom.Placed(dig, width - digWidth, 0, digWidth));
    List<Block> left = new ArrayList<>();
    if (placed.stream().anyMatch(p -> p.low() > HIGHEST * paper)) {
      // The plan needs the room more: the tables have a page of their own.
      placed = List.of();
      x = 0;
      left.add(rows.table(all, FormRows.WIDEST));
      left.add(rows.dig(FormRows.WIDEST));
    }
    return Bottom.texts(orders(), cautions(), width, x, width - digWidth - GAP, placed, left);
  }

  private List<String> orders() {
    List<String> orders = new ArrayList<>();
    orders.add(facts.say("forms.string"));
    orders.addAll(new Orders(facts).thickened());
    orders.addAll(openings());
    OrderWords said = new OrderWords(facts.words());
    for (Line stakes : takeoff.of(Item.STAKES)) {
      orders.add(
          facts.say(
              "forms.stakes",
              said.amount(stakes),
              FormWork.stakes(false, facts.words().units()),
              FormWork.stakes(true, facts.words().units())));
    }
    return orders;
  }

  /** Where each opening goes: two of its corners, from a side that stands. */
  private List<String> openings() {
    Sides sides = new Sides(facts.lettering());
    List<String> said = new ArrayList<>();
    for (Slab slab : facts.plan().slabs()) {
      for (Opening opening : slab.openings()) {
        List<String> corners =
            facts.lettering().corners().stream()
                .filter(c -> opening.outline().ring().distance(c.at()) < Sides.ON)
                .limit(2)
                .map(c -> c.letter() + " " + facts.off(sides.fromOutline(slab, c.at())))
                .toList();
        if (!corners.isEmpty()) {
          said.add(facts.say("forms.opening", String.join("; ", corners)));
        }
      }
    }
    return said;
  }

  private List<String> cautions() {
    List<String> said =
        Caution.say(facts.words(), facts.plan(), Caution.DIGGING, Caution.TRAFFIC, Caution.CODES);
    return List.of((facts.square() + " " + String.join(" ", said)).strip());
  }
}
