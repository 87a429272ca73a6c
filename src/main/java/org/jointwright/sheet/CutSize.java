package org.jointwright.sheet;

import java.util.List;
import java.util.Objects;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.jointwright.practice.JointDepth;
import org.jointwright.practice.JointWidth;

/**
 * How deep and wide a joint is cut, as it is printed.
 *
 * @param how with what it is cut
 */
record CutSize(How how, String depth, String width) {
  static CutSize of(Item item, Facts facts) {
    Joint joint = item.joints().getFirst();
    Slab slab = facts.plan().slab(item.slab()).orElseThrow();
    How how = joint.how().orElse(JointDepth.USUAL);
    Length least = joint.depth().orElse(JointDepth.least(slab.thickness(), how));
    double usual =
        switch (how) {
          case TOOLED -> JointWidth.TOOLED_LEAST.value().inches();
          case SAWN, EARLY_ENTRY -> JointWidth.SAWN.value().inches();
        };
    String width = facts.fine(joint.width().map(w -> w.inches()).orElse(usual));
    return new CutSize(how, facts.words().printAtLeast(least), width);
  }

  /** What is said at the head of a table of cuts: their size, where it is one for all. */
  static String remark(List<Item> cuts, Facts facts) {
    List<CutSize> sizes = cuts.stream().map(i -> of(i, facts)).distinct().toList();
    if (sizes.size() != 1) {
      return "";
    }
    CutSize size = Objects.requireNonNull(sizes.getFirst());
    return facts.say("cut.size", size.width(), size.depth());
  }
}
