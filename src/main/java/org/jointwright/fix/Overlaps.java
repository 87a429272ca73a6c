package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jointwright.plan.Joint;

/** Takes out a joint that lies on another, on an edge, or off the slab. */
final class Overlaps implements Remedy {
  private static final double ON = 1;

  @Override
  public List<Fix> proposals(Broken broken) {
    List<Fix> fixes = new ArrayList<>();
    for (Joint j : broken.slab().joints()) {
      boolean isNamed = broken.joint().filter(j::equals).isPresent();
      boolean isThere = j.path().distance(broken.finding().at()) <= ON;
      boolean isFiller = j.kind() == org.jointwright.plan.JointKind.ISOLATION && !isNamed;
      if ((isNamed || isThere) && !isFiller) {
        fixes.add(
            Fix.of(
                "fix.drop.one",
                "fix.did.drop",
                List.of(broken.name(j)),
                broken.redraft().without(Set.of(j.id())).edit()));
      }
    }
    return fixes;
  }
}
