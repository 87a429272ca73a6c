package org.jointwright.fix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jointwright.fix.line.Straight;
import org.jointwright.fix.name.JointName;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;

/** Leaves out a joint at the place: the one piece, or the whole line that it is of. */
final class TakeOut implements Remedy {
  @Override
  public List<Fix> proposals(Broken broken) {
    Map<String, Joint> joints = new LinkedHashMap<>();
    broken.joint().ifPresent(j -> joints.put(j.id(), j));
    broken
        .panel()
        .ifPresent(p -> Neighbours.joints(broken, p).forEach(j -> joints.putIfAbsent(j.id(), j)));
    List<Fix> fixes = new ArrayList<>();
    for (Joint j : joints.values()) {
      if (j.kind() == JointKind.CONTRACTION && !j.locked()) {
        fixes.add(fix(broken, j.id(), Set.of(j.id())));
        Straight.of(broken.floor(), j)
            .filter(l -> l.joints().size() > 1 && !l.isLocked())
            .ifPresent(l -> fixes.add(fix(broken, j.id(), l.ids())));
      }
    }
    return fixes;
  }

  private static Fix fix(Broken broken, String id, Set<String> ids) {
    return Fix.of(
        ids.size() == 1 ? "fix.drop.one" : "fix.drop.line",
        "fix.did.drop",
        List.of(new JointName(broken.slab().id(), id)),
        broken.redraft().without(ids).edit());
  }
}
