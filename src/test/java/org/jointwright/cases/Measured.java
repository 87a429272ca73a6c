package org.jointwright.cases;

import java.util.List;
import java.util.TreeSet;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;

/**
 * The figures of a layout, by the judge's evidence and not by the engine's own score.
 *
 * @param cost feet of joint and what tees and uneven panels count for, all slabs together
 * @param feet length of contraction joint
 * @param tees tees, a Y counted half
 * @param panels panels, tips left out
 * @param broken the rules that must hold and do not, in order
 */
record Measured(double cost, double feet, double tees, int panels, List<String> broken) {
  private static final double FOOT = 12;

  /** Feet of joint that a tee counts for: common practice, no source. */
  private static final double TEE = 8;

  /** Unevenness of the panels that costs nothing, and what the rest costs: own choice. */
  private static final double EVEN = 0.10;

  private static final double UNEVEN = 0.25;

  /** The figures of a layout that was laid for this plan. */
  static Measured of(Plan asked, Layout laid) {
    Judgement judgement = Checks.judge(asked, laid);
    if (!judgement.isComplete()) {
      throw new IllegalStateException("rules crashed: " + judgement.crashed());
    }
    TreeSet<String> broken = new TreeSet<>();
    judgement.of(Severity.MUST).forEach(f -> broken.add(f.rule()));
    double cost = 0;
    double feet = 0;
    double tees = 0;
    int panels = 0;
    for (SlabLayout slab : laid.slabs()) {
      Judged judged = new Judged(asked, laid, slab);
      List<Face> faces = judged.faces().stream().filter(f -> !judged.isTip(f)).toList();
      double length = feet(judged);
      double ends = judged.meetings().stream().mapToDouble(m -> m.isY() ? 0.5 : 1).sum();
      cost += length + TEE * ends + UNEVEN * length * Math.max(0, unevenness(faces) - EVEN);
      feet += length;
      tees += ends;
      panels += faces.size();
    }
    return new Measured(cost, feet, tees, panels, List.copyOf(broken));
  }

  private static double feet(Judged judged) {
    double inches = 0;
    for (Joint j : judged.joints()) {
      if (j.kind() == JointKind.CONTRACTION && !judged.corners().joints().contains(j.id())) {
        inches += j.path().length();
      }
    }
    return inches / FOOT;
  }

  /** The coefficient of variation of the panels' areas. */
  private static double unevenness(List<Face> faces) {
    double mean = faces.stream().mapToDouble(f -> f.measures().area()).average().orElse(1);
    double spread =
        faces.stream()
            .mapToDouble(f -> Math.pow(f.measures().area() - mean, 2))
            .average()
            .orElse(0);
    return Math.sqrt(spread) / mean;
  }
}
