package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.fix.line.Straight;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Point;

/** Moves a joint that passes near an inside corner onto it, or turns it so that it ends there. */
final class ThroughCorner implements Remedy {
  /** A joint farther off than this is left where it is, inches. */
  private static final double NEAR = 36;

  @Override
  public List<Fix> proposals(Broken broken) {
    Point corner = broken.finding().at();
    List<Fix> fixes = new ArrayList<>();
    for (Joint j : broken.slab().joints()) {
      boolean isNear =
          j.path().start().distance(corner) <= NEAR || j.path().end().distance(corner) <= NEAR;
      if (isNear && !j.locked()) {
        Straight.of(broken.floor(), j)
            .ifPresent(
                line -> {
                  Shifts.through(broken, line, corner).ifPresent(fixes::add);
                  Point far =
                      line.ends().stream()
                          .max(java.util.Comparator.comparingDouble(p -> p.distance(corner)))
                          .orElseThrow();
                  Shifts.turned(broken, line, far, corner.minus(far).unit(), "fix.turn.toCorner")
                      .ifPresent(fixes::add);
                });
      }
    }
    return fixes;
  }
}
