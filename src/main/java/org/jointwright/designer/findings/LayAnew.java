package org.jointwright.designer.findings;

import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Wish;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.text.Words;

/**
 * Laying a slab's joints anew, offered where they do not stand as they were laid: a hand has
 * changed them, or they came in a file.
 *
 * @param text what it says
 * @param slab the slab's id
 */
public record LayAnew(String text, String slab) {
  /** What is offered; empty where it would change nothing. */
  public static Optional<LayAnew> of(Desk desk, Slab slab, Words words) {
    boolean isByHand = desk.laying().wish().filter(Wish::lay).isEmpty();
    boolean isFree = slab.joints().stream().anyMatch(j -> isCut(j) && !j.locked());
    boolean isHeld = slab.joints().stream().anyMatch(j -> isCut(j) && j.locked());
    String key = isHeld ? "window.deed.layOthers" : "window.deed.layAnew";
    return isFree && (isByHand || isHeld)
        ? Optional.of(new LayAnew(words.say(key), slab.id()))
        : Optional.empty();
  }

  /** The desk with it done. */
  public Desk done(Desk desk) {
    return desk.layingOthers(slab);
  }

  static boolean isCut(Joint joint) {
    return joint.kind() == JointKind.CONTRACTION;
  }
}
