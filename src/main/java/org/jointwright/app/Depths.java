package org.jointwright.app;

import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.practice.JointDepth;

/** How deep joints are to be made. */
public final class Depths {
  private Depths() {}

  /** A contraction joint's depth: its own where it is said, else the least that its slab asks. */
  public static Optional<Length> of(Slab slab, Joint joint) {
    if (joint.kind() != JointKind.CONTRACTION || joint.depth().isPresent()) {
      return joint.depth();
    }
    How how = joint.how().orElse(JointDepth.USUAL);
    return Optional.of(JointDepth.least(slab.thickness(), how));
  }
}
