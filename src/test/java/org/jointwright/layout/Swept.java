package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * An invented plan that was laid, and what a judge makes of it.
 *
 * @param of which one
 * @param figures the figures of its layout
 * @param faults what is wrong, a rule and how often, or words; nothing where all is well
 * @param slanted by how many degrees joints of a slab with square corners lie off its sides
 * @param seconds how long it took
 */
record Swept(
    Seeded of, Figures figures, List<String> faults, List<Double> slanted, double seconds) {
  /** A joint that lies off by more than this is slanted, degrees. */
  private static final double STRAIGHT = 0.01;

  /** Judges what was laid for a plan. */
  static Swept of(Seeded of, Plan asked, Layout laid, double seconds) {
    return new Swept(
        of,
        Figures.of(asked, laid),
        faults(asked, laid),
        of.kind().isSquare() ? slanted(laid) : List.of(),
        seconds);
  }

  /**
   * Rules broken that must hold, panels that do not tile the slab, joints that cut nothing;
   * settings said to clash (C1), where an invented plan asks for nothing out of the ordinary.
   */
  static List<String> faults(Plan asked, Layout laid) {
    Judgement judgement = Checks.judge(asked, laid);
    TreeMap<String, Integer> counts = new TreeMap<>();
    judgement.of(Severity.MUST).forEach(f -> counts.merge(f.rule(), 1, Integer::sum));
    List<String> faults = new ArrayList<>();
    counts.forEach((rule, n) -> faults.add(rule + " x " + n));
    if (judgement.findings().stream().anyMatch(f -> f.rule().equals("C1"))) {
      faults.add("said to be impossible");
    }
    if (!judgement.isComplete()) {
      faults.add("rules crashed");
    }
    for (SlabLayout s : laid.slabs()) {
      double panels = s.panels().stream().mapToDouble(Panel::area).sum();
      double boxes = s.boxOuts().stream().mapToDouble(Swept::area).sum();
      double off = panels + boxes - s.slab().region().area();
      if (Math.abs(off) > 2) {
        faults.add(String.format(Locale.ROOT, "panels %.1f sq in off", off));
      }
      if (!s.loose().isEmpty()) {
        faults.add("loose joints");
      }
    }
    return faults;
  }

  private static double area(BoxOut b) {
    return b.outline().ring().area();
  }

  private static List<Double> slanted(Layout laid) {
    List<Double> found = new ArrayList<>();
    for (SlabLayout s : laid.slabs()) {
      for (Joint j : s.joints()) {
        if (j.kind() == JointKind.CONTRACTION
            && j.path().edges().size() == 1
            && j.path().edges().getFirst() instanceof Segment) {
          Point way = j.path().end().minus(j.path().start()).unit();
          double off = Math.toDegrees(Math.asin(Math.min(Math.abs(way.x()), Math.abs(way.y()))));
          if (off > STRAIGHT) {
            found.add(off);
          }
        }
      }
    }
    return found;
  }
}
