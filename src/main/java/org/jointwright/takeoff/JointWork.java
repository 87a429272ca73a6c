package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.joint.FillerWidth;
import org.jointwright.joint.Numbering;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Filler;
import org.jointwright.practice.JointDepth;

/** Filler by its size, and joints to tool or saw by their depth. */
final class JointWork {
  /** What is counted together: an item and two measures, inches. */
  private record Kind(Item item, double first, double second) implements Comparable<Kind> {
    private static final Comparator<Kind> ORDER =
        Comparator.comparing(Kind::item)
            .thenComparingDouble(Kind::first)
            .thenComparingDouble(Kind::second);

    @Override
    public int compareTo(Kind other) {
      return ORDER.compare(this, other);
    }
  }

  private final Plan plan;
  private final Map<Kind, List<Double>> lengths = new TreeMap<>();

  private JointWork(Plan plan) {
    this.plan = plan;
  }

  static List<Line> of(Plan plan, Numbering numbering) {
    JointWork work = new JointWork(plan);
    numbering.items().forEach(work::count);
    return work.lines();
  }

  private void count(Numbering.Item item) {
    Slab slab = plan.slab(item.slab()).orElseThrow();
    switch (item.work()) {
      case CUT -> item.joints().forEach(j -> add(cut(j, slab), j.path().length()));
      case FORM -> {
        // Its boards are counted with the forms.
      }
      case SET, BOX_OUT -> filler(item, slab);
    }
  }

  private void filler(Numbering.Item item, Slab slab) {
    double high = slab.thickness().inches();
    for (Joint j : item.joints()) {
      add(new Kind(Item.FILLER, FillerWidth.of(j, slab), high), j.path().length());
    }
    if (item.joints().isEmpty()) {
      add(new Kind(Item.FILLER, Filler.WIDTH.value().inches(), high), item.path().length());
    }
  }

  private static Kind cut(Joint joint, Slab slab) {
    How how = joint.how().orElse(JointDepth.USUAL);
    Length depth = joint.depth().orElse(JointDepth.least(slab.thickness(), how));
    Item item =
        switch (how) {
          case TOOLED -> Item.TOOLED;
          case SAWN -> Item.SAWN;
          case EARLY_ENTRY -> Item.EARLY;
        };
    return new Kind(item, depth.inches(), 0);
  }

  private void add(Kind kind, double length) {
    lengths.computeIfAbsent(kind, k -> new ArrayList<>()).add(length);
  }

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    lengths.forEach(
        (kind, some) -> {
          Length all = Length.inches(some.stream().mapToDouble(l -> l).sum());
          List<Object> of =
              kind.item() == Item.FILLER
                  ? List.of(Length.inches(kind.first()), Length.inches(kind.second()))
                  : List.of(Length.inches(kind.first()));
          lines.add(
              new Line(
                  kind.item(),
                  of,
                  new Amount.OfLength(all),
                  List.of(Step.of("joints", some.size(), all)),
                  List.of()));
        });
    return lines;
  }
}
