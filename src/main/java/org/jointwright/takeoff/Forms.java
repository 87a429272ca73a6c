package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.joint.Numbering;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.FormWork;

/** Form boards, the stops across slabs, and the stakes that hold them all. */
final class Forms {
  private static final double NOISE = 1e-9;

  /** A joint this near to an edge runs along it; inches. */
  private static final double ALONG = 0.5;

  private final List<Line> lines = new ArrayList<>();
  private int stakes;

  private final UnitSystem measures;

  private Forms(UnitSystem measures) {
    this.measures = measures;
  }

  static List<Line> of(Plan plan, Numbering numbering, UnitSystem measures) {
    Forms forms = new Forms(measures);
    List<FormRuns.Run> runs = FormRuns.of(plan);
    forms.boards(Item.BOARDS, runs.stream().filter(r -> !r.isBent()).toList());
    forms.boards(Item.BENT_BOARDS, runs.stream().filter(FormRuns.Run::isBent).toList());
    forms.boards(Item.STOPS, stops(plan, numbering));
    if (forms.stakes > 0) {
      forms.lines.add(
          new Line(
              Item.STAKES,
              List.of(),
              new Amount.Pieces(forms.stakes),
              List.of(
                  Step.of(
                      "stakes", FormWork.stakes(false, measures), FormWork.stakes(true, measures))),
              FormWork.STAKES.sources()));
    }
    return forms.lines;
  }

  private static List<FormRuns.Run> stops(Plan plan, Numbering numbering) {
    return numbering.items().stream()
        .filter(i -> i.work() == Numbering.Work.FORM)
        // Between two slabs the board is one of the slabs' own.
        .filter(i -> plan.slabs().stream().noneMatch(s -> runsAlong(s, i)))
        .map(
            i ->
                new FormRuns.Run(
                    i.path().length(), plan.slab(i.slab()).orElseThrow().thickness(), false))
        .toList();
  }

  private static boolean runsAlong(Slab slab, Numbering.Item item) {
    return slab.outline().ring().distance(item.path().middle()) < ALONG;
  }

  /** One line for each height; stakes at both ends of a stretch and between. */
  private void boards(Item item, List<FormRuns.Run> runs) {
    Map<Double, List<FormRuns.Run>> byHeight = new TreeMap<>();
    for (FormRuns.Run r : runs) {
      byHeight.computeIfAbsent(r.high().inches(), h -> new ArrayList<>()).add(r);
      Length apart = FormWork.stakes(r.isBent(), measures);
      stakes += (int) Math.ceil(r.length() / apart.inches() - NOISE) + 1;
    }
    byHeight.forEach(
        (height, some) -> {
          Length all = Length.inches(some.stream().mapToDouble(FormRuns.Run::length).sum());
          Length board = FormWork.BOARD.value();
          int boards = (int) Math.ceil(all.inches() / board.inches() - NOISE);
          lines.add(
              new Line(
                  item,
                  List.of(Length.inches(height)),
                  new Amount.OfLength(all),
                  List.of(Step.of("boards", some.size(), all, boards, board)),
                  FormWork.BOARD.sources()));
        });
  }
}
