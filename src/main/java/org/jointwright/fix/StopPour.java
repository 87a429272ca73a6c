package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Redraft;
import org.jointwright.fix.line.Straight;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Point;

/** Makes lines of contraction joints construction joints, so that less is poured in one go. */
final class StopPour implements Remedy {
  /** A slab is poured in no more goes than this. */
  private static final int MOST_GOES = 6;

  /** Lines nearer to one direction than this are parallel, the sine: about 3 degrees. */
  private static final double PARALLEL = 0.05;

  @Override
  public List<Fix> proposals(Broken broken) {
    List<Straight> lines = lines(broken.floor());
    List<Fix> fixes = new ArrayList<>();
    for (Straight first : lines) {
      List<Straight> parallel =
          lines.stream()
              .filter(l -> Math.abs(l.heading().cross(first.heading())) < PARALLEL)
              .sorted(Comparator.comparingDouble(l -> first.off(l.at())))
              .toList();
      if (parallel.getFirst().equals(first)) {
        for (int goes = 2; goes <= MOST_GOES && goes - 1 <= parallel.size(); goes++) {
          fixes.add(fix(broken, evenly(broken.floor(), first, parallel, goes)));
        }
      }
    }
    return fixes;
  }

  private static List<Straight> lines(Floor floor) {
    List<Straight> lines = new ArrayList<>();
    for (Joint j : floor.slab().joints()) {
      if (!j.locked() && lines.stream().noneMatch(l -> l.ids().contains(j.id()))) {
        Straight.of(floor, j).ifPresent(lines::add);
      }
    }
    return lines;
  }

  /** The lines nearest to where the slab would be cut into so many strips of one width. */
  private static List<Straight> evenly(
      Floor floor, Straight first, List<Straight> parallel, int goes) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Point p : floor.slab().outline().ring().vertices()) {
      from = Math.min(from, first.off(p));
      to = Math.max(to, first.off(p));
    }
    List<Straight> chosen = new ArrayList<>();
    for (int i = 1; i < goes; i++) {
      double at = from + (to - from) * i / goes;
      Optional<Straight> nearest =
          parallel.stream()
              .filter(l -> !chosen.contains(l))
              .min(Comparator.comparingDouble(l -> Math.abs(first.off(l.at()) - at)));
      nearest.ifPresent(chosen::add);
    }
    return chosen;
  }

  private static Fix fix(Broken broken, List<Straight> lines) {
    Redraft redraft = broken.redraft();
    for (Straight line : lines) {
      for (Joint j : line.joints()) {
        redraft = redraft.with(construction(j));
      }
    }
    return Fix.of(
        "fix.pour",
        "fix.did.pour",
        List.of(broken.name(lines.getFirst().joints().getFirst()), lines.size()),
        redraft.edit());
  }

  private static Joint construction(Joint j) {
    return new Joint(
        j.id(),
        JointKind.CONSTRUCTION,
        j.path(),
        true,
        j.purpose(),
        Optional.empty(),
        Optional.empty(),
        j.width(),
        j.kept());
  }
}
