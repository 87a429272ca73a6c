package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;

/**
 * A layout to be painted: joints that go on from one another in one straight line are one line.
 * They look the same, and a yard whose joints were parted at every crossing has twenty thousand of
 * them, but a few hundred lines.
 */
final class Lines {
  private Lines() {}

  static Layout of(Layout layout, Numbering numbering) {
    return new Layout(
        layout.plan(), layout.slabs().stream().map(s -> joined(s, numbering)).toList());
  }

  private static SlabLayout joined(SlabLayout slab, Numbering numbering) {
    Set<String> parts = new HashSet<>();
    List<Joint> joints = new ArrayList<>();
    for (Numbering.Item item : numbering.items()) {
      if (item.slab().equals(slab.slab().id()) && isLine(item)) {
        item.joints().forEach(j -> parts.add(j.id()));
        joints.add(item.joints().getFirst().withPath(item.path()));
      }
    }
    if (parts.isEmpty()) {
      return slab;
    }
    slab.joints().stream().filter(j -> !parts.contains(j.id())).forEach(joints::add);
    return new SlabLayout(
        slab.slab().withLaid(joints, slab.boxOuts()), slab.panels(), slab.loose());
  }

  private static boolean isLine(Numbering.Item item) {
    return item.work() == Numbering.Work.CUT
        && item.joints().size() > 1
        && item.joints().stream().allMatch(j -> j.path().edges().size() == 1);
  }
}
