package org.jointwright.fix.line;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.shape.Path;

/**
 * A slab's joints with some changes made.
 *
 * @param slab the slab's name
 * @param joints its joints as they are to be
 * @param boxOuts its box-outs as they are to be
 */
public record Redraft(String slab, List<Joint> joints, List<BoxOut> boxOuts) {
  /** Copies the lists. */
  public Redraft {
    joints = List.copyOf(joints);
    boxOuts = List.copyOf(boxOuts);
  }

  /** A slab's joints as they are. */
  public static Redraft of(Slab slab) {
    return new Redraft(slab.id(), slab.joints(), slab.boxOuts());
  }

  /** With joints in place of those of the same names. */
  public Redraft with(Collection<Joint> changed) {
    List<Joint> all = new ArrayList<>();
    for (Joint j : joints) {
      all.add(changed.stream().filter(c -> c.id().equals(j.id())).findFirst().orElse(j));
    }
    return new Redraft(slab, all, boxOuts);
  }

  /** With a joint in place of that of the same name. */
  public Redraft with(Joint changed) {
    return with(List.of(changed));
  }

  /** With a new joint, which is locked so that it stays when others are laid anew. */
  public Redraft adding(JointKind kind, Path path, Purpose purpose) {
    return adding(named(kind, path, purpose).withLocked(true));
  }

  /** With a new joint that is free to go when others are laid anew. */
  public Redraft laying(JointKind kind, Path path, Purpose purpose) {
    return adding(named(kind, path, purpose));
  }

  private Joint named(JointKind kind, Path path, Purpose purpose) {
    Set<String> taken = new HashSet<>();
    joints.forEach(j -> taken.add(j.id()));
    int n = joints.size() + 1;
    while (taken.contains("J" + n)) {
      n++;
    }
    return Joint.of("J" + n, kind, path, purpose);
  }

  /** With a new joint under its own name. */
  public Redraft adding(Joint joint) {
    List<Joint> all = new ArrayList<>(joints);
    all.add(joint);
    return new Redraft(slab, all, boxOuts);
  }

  /** Without the joints of those names. */
  public Redraft without(Set<String> ids) {
    return new Redraft(slab, joints.stream().filter(j -> !ids.contains(j.id())).toList(), boxOuts);
  }

  /** With a box-out in place of whatever there was round the same object. */
  public Redraft boxingOut(BoxOut boxOut) {
    List<BoxOut> all = new ArrayList<>(boxOuts);
    all.removeIf(b -> b.fixed().equals(boxOut.fixed()));
    all.add(boxOut);
    return new Redraft(slab, joints, all);
  }

  /** The edit that makes it so. */
  public JointEdit edit() {
    return new JointEdit.Mend(slab, joints, boxOuts);
  }
}
