package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jointwright.fix.line.Straight;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Point;

/** Moves a joint that ends on another to the one that ends on its other side, or that one to it. */
final class LineUp implements Remedy {
  /** Farther than this nothing is moved, inches. */
  private static final double FARTHEST = 60;

  /** Two headings nearer than this are one, the sine: about 6 degrees. */
  private static final double SAME_WAY = 0.1;

  @Override
  public List<Fix> proposals(Broken broken) {
    Point at = broken.finding().at();
    Set<Joint> joints = new LinkedHashSet<>();
    broken.joint().ifPresent(joints::add);
    broken.slab().joints().stream()
        .filter(j -> j.path().start().distance(at) <= 1 || j.path().end().distance(at) <= 1)
        .forEach(joints::add);
    List<Fix> fixes = new ArrayList<>();
    for (Joint j : joints) {
      Straight.of(broken.floor(), j).ifPresent(line -> lineUp(broken, line, at, fixes));
    }
    return fixes;
  }

  private static void lineUp(Broken broken, Straight line, Point at, List<Fix> fixes) {
    Point u = line.heading();
    record Other(Straight line, Point end) {}
    broken.slab().joints().stream()
        .filter(j -> !line.ids().contains(j.id()))
        .flatMap(j -> Straight.of(broken.floor(), j).stream())
        .filter(o -> Math.abs(o.heading().cross(u)) < SAME_WAY)
        .flatMap(
            o -> Stream.of(new Other(o, o.ends().getFirst()), new Other(o, o.ends().getLast())))
        .filter(o -> o.end().distance(at) <= FARTHEST)
        .sorted(Comparator.comparingDouble(o -> o.end().distance(at)))
        .limit(4)
        .forEach(
            o -> {
              Shifts.through(broken, line, o.end()).ifPresent(fixes::add);
              Shifts.through(broken, o.line(), at).ifPresent(fixes::add);
            });
  }
}
