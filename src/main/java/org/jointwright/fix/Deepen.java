package org.jointwright.fix;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.practice.JointDepth;

/** Makes a joint as deep as its slab asks; with it all that are as shallow. */
final class Deepen implements Remedy {
  @Override
  public List<Fix> proposals(Broken broken) {
    return broken
        .joint()
        .map(
            j -> {
              How how = j.how().orElse(JointDepth.USUAL);
              Length least = JointDepth.least(broken.slab().thickness(), how);
              return List.of(
                  Fix.of(
                      "fix.deepen",
                      "fix.did.deepen",
                      List.of(broken.name(j), least),
                      broken.redraft().with(deep(j, least)).edit()));
            })
        .orElse(List.of());
  }

  private static Joint deep(Joint j, Length depth) {
    return new Joint(
        j.id(),
        j.kind(),
        j.path(),
        j.locked(),
        j.purpose(),
        j.how(),
        Optional.of(depth),
        j.width(),
        j.kept());
  }
}
