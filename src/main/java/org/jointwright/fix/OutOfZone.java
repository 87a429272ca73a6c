package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.fix.line.Straight;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Moves a joint out of a zone that is to be kept clear, to either side, or takes it out. */
final class OutOfZone implements Remedy {
  /** How far beside the zone a joint is laid, inches. */
  private static final double BESIDE = 1;

  private static final int SAMPLES = 24;

  @Override
  public List<Fix> proposals(Broken broken) {
    List<Fix> fixes = new ArrayList<>();
    List<Ring> zones = broken.slab().keepClear().stream().map(z -> z.outline().ring()).toList();
    for (Ring zone : zones) {
      broken
          .joint()
          .filter(j -> runsIn(j, zone) && !j.locked())
          .flatMap(j -> Straight.of(broken.floor(), j))
          .ifPresent(l -> beside(broken, l, zone, fixes));
    }
    fixes.addAll(new TakeOut().proposals(broken));
    return fixes;
  }

  private static boolean runsIn(Joint joint, Ring zone) {
    return joint.path().edges().stream()
        .anyMatch(
            e -> {
              for (int i = 0; i <= SAMPLES; i++) {
                if (zone.contains(e.at((double) i / SAMPLES))) {
                  return true;
                }
              }
              return false;
            });
  }

  private static void beside(Broken broken, Straight line, Ring zone, List<Fix> fixes) {
    double left = zone.vertices().stream().mapToDouble(line::off).max().orElse(0) + BESIDE;
    double right = zone.vertices().stream().mapToDouble(line::off).min().orElse(0) - BESIDE;
    List<Double> nearer =
        Math.abs(left) <= Math.abs(right) ? List.of(left, right) : List.of(right, left);
    for (double by : nearer) {
      Shifts.toWholeMark(broken, line, by).ifPresent(fixes::add);
      Point there = line.at().plus(line.heading().left().times(by));
      Shifts.through(broken, line, there).ifPresent(fixes::add);
    }
  }
}
