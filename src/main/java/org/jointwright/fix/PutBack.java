package org.jointwright.fix;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Redraft;
import org.jointwright.fix.line.Relaid;
import org.jointwright.fix.line.Straight;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;

/** Puts a locked joint back where its user locked it, and takes out what lies there. */
final class PutBack implements Remedy {
  private static final int SAMPLES = 8;

  @Override
  public List<Fix> proposals(Broken broken) {
    Optional<Joint> asked =
        broken
            .asked()
            .slab(broken.slab().id())
            .flatMap(s -> wanted(s, broken.finding().joint().orElse("")));
    return asked.map(j -> proposals(broken, j)).orElse(List.of());
  }

  private static Optional<Joint> wanted(Slab slab, String id) {
    return slab.lockedJoints().stream().filter(j -> j.id().equals(id)).findFirst();
  }

  private static List<Fix> proposals(Broken broken, Joint joint) {
    List<Fix> fixes = new ArrayList<>();
    Optional<Joint> there = broken.floor().joint(joint.id());
    // Moved: back with all that ends on it.
    there
        .filter(j -> Straight.isStraight(j) && Straight.isStraight(joint))
        .flatMap(Straight::alone)
        .flatMap(
            line ->
                Relaid.onto(
                    broken.floor(),
                    line,
                    joint.path().start(),
                    joint.path().end().minus(joint.path().start())))
        .ifPresent(
            changed -> fixes.add(fix(broken, joint, broken.redraft().with(changed).with(joint))));
    // Gone, or something else under its name: laid over what lies along it.
    Set<String> along = new HashSet<>();
    for (Joint j : broken.slab().joints()) {
      if (j.id().equals(joint.id()) || liesOn(j, joint)) {
        along.add(j.id());
      }
    }
    fixes.add(fix(broken, joint, broken.redraft().without(along).adding(joint)));
    fixes.add(fix(broken, joint, broken.redraft().without(Set.of(joint.id())).adding(joint)));
    return fixes;
  }

  private static boolean liesOn(Joint j, Joint joint) {
    return j.path().edges().stream()
        .allMatch(
            e -> {
              for (int i = 0; i <= SAMPLES; i++) {
                if (joint.path().distance(e.at((double) i / SAMPLES)) > Floor.ON) {
                  return false;
                }
              }
              return true;
            });
  }

  private static Fix fix(Broken broken, Joint joint, Redraft redraft) {
    return Fix.of("fix.putBack", "fix.did.putBack", List.of(broken.name(joint)), redraft.edit());
  }
}
