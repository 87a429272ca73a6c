package org.jointwright.reason;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;

/**
 * The joints whose place is given by something else than the joints beside them: those that the
 * others are set out between.
 */
final class Anchors {
  private final Set<String> held = new HashSet<>();

  Anchors(Ground ground) {
    List<String> next = new ArrayList<>();
    for (Joint j : ground.joints()) {
      boolean isHeld =
          j.locked()
              || EndOrigins.of(ground, j, true).stream().anyMatch(Anchors::holds)
              || EndOrigins.of(ground, j, false).stream().anyMatch(Anchors::holds);
      if (isHeld && held.add(j.id())) {
        next.add(j.id());
      }
    }
    // What goes on in one line with a joint that is held is held with it.
    while (!next.isEmpty()) {
      String id = next.removeLast();
      for (Joint j : ground.joints()) {
        if (j.id().equals(id)) {
          for (boolean first : new boolean[] {true, false}) {
            EndOrigins.goingOn(ground, j, first).stream().filter(held::add).forEach(next::add);
          }
        }
      }
    }
  }

  /** Whether a line stands where it is for a reason of its own: every edge does. */
  boolean hold(Source line) {
    return !(line instanceof Source.OnJoint j) || held.contains(j.joint());
  }

  private static boolean holds(Origin o) {
    return switch (o) {
      case Origin.InsideCorner x -> true;
      case Origin.BoxOutCorner x -> true;
      case Origin.EndOfArc x -> true;
      case Origin.OutsideCorner x -> true;
      case Origin.FeatureEnd x -> true;
      case Origin.GivenJointEnd x -> true;
      case Origin.NeighbourJoint x -> true;
      default -> false;
    };
  }
}
