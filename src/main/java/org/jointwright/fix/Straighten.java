package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.fix.line.Straight;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Point;

/**
 * Lays a line straight: on from the one that it bends from, or along or square to the slab's sides.
 */
final class Straighten implements Remedy {
  /** Lines that part more than this are no bent line, the sine: about 20 degrees. */
  private static final double BENT = 0.34;

  private static final double ENDS_THERE = 1;

  /** A turn under this is none, the sine. */
  private static final double NO_TURN = 0.003;

  @Override
  public List<Fix> proposals(Broken broken) {
    Optional<Straight> line = broken.joint().flatMap(j -> Straight.of(broken.floor(), j));
    List<Fix> fixes = new ArrayList<>();
    line.ifPresent(
        l -> {
          bent(broken, l, fixes);
          alongSides(broken, l, fixes);
        });
    return fixes;
  }

  private static void bent(Broken broken, Straight line, List<Fix> fixes) {
    Point at = broken.finding().at();
    for (Joint j : broken.slab().joints()) {
      boolean meets =
          j.path().start().distance(at) <= ENDS_THERE || j.path().end().distance(at) <= ENDS_THERE;
      if (meets && !line.ids().contains(j.id())) {
        Straight.of(broken.floor(), j)
            .filter(o -> Math.abs(o.heading().cross(line.heading())) < BENT)
            .ifPresent(
                o -> {
                  Shifts.turned(broken, line, o.at(), o.heading(), "fix.turn.straight")
                      .ifPresent(fixes::add);
                  Shifts.turned(broken, o, line.at(), line.heading(), "fix.turn.straight")
                      .ifPresent(fixes::add);
                });
      }
    }
  }

  private static void alongSides(Broken broken, Straight line, List<Fix> fixes) {
    Point u = line.heading();
    List<Point> ends = line.ends();
    List<Point> pivots =
        List.of(ends.getFirst(), ends.getLast(), ends.getFirst().towards(ends.getLast(), 0.5));
    broken.slab().outline().ring().edges().stream()
        .map(e -> e.direction(0.5))
        .flatMap(d -> java.util.stream.Stream.of(d, d.left()))
        .map(d -> d.dot(u) < 0 ? d.times(-1) : d)
        .filter(d -> Math.abs(d.cross(u)) < BENT && Math.abs(d.cross(u)) > NO_TURN)
        .forEach(
            d ->
                pivots.forEach(
                    p ->
                        Shifts.turned(broken, line, p, d, "fix.turn.straight")
                            .ifPresent(fixes::add)));
  }
}
