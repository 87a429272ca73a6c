package org.jointwright.cases;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Path;

/** Counts how steady layouts are from one step of a drag to the next. */
final class Steadiness {
  /** Marks are kept to 1/16 in: S6. */
  private static final double ROUNDING = 1.0 / 16;

  /** A joint that moved farther from all that were there belongs to another pattern, inches. */
  private static final double OTHER = 6;

  /** A pattern that comes back may have been stretched meanwhile, inches. */
  private static final double STRETCHED = 12;

  private int joints;
  private int moved;
  private int jumped;
  private int steps;
  private int changes;
  private int back;

  /** A drag from its first layout to its last. */
  void add(List<Layout> layouts) {
    List<Layout> left = new ArrayList<>();
    for (int k = 1; k < layouts.size(); k++) {
      Layout before = layouts.get(k - 1);
      Layout now = layouts.get(k);
      steps++;
      count(before, now);
      if (!isSame(before, now, OTHER)) {
        changes++;
        left.add(before);
        if (left.subList(0, left.size() - 1).stream().anyMatch(l -> isSame(l, now, STRETCHED))) {
          back++;
        }
      }
    }
  }

  private void count(Layout before, Layout now) {
    for (SlabLayout s : now.slabs()) {
      List<Joint> old = pattern(before, s);
      for (Joint j : pattern(now, s)) {
        double least = old.stream().mapToDouble(o -> apart(o.path(), j.path())).min().orElse(99);
        joints++;
        moved += least > Drag.STEP + ROUNDING ? 1 : 0;
        jumped += least > Drag.STEP + 1 + ROUNDING ? 1 : 0;
      }
    }
  }

  static boolean isSame(Layout before, Layout now, double far) {
    for (SlabLayout s : now.slabs()) {
      List<Joint> old = pattern(before, s);
      List<Joint> joints = pattern(now, s);
      boolean alike =
          old.size() == joints.size()
              && joints.stream()
                  .allMatch(j -> old.stream().anyMatch(o -> apart(o.path(), j.path()) <= far));
      if (!alike) {
        return false;
      }
    }
    return true;
  }

  private static List<Joint> pattern(Layout layout, SlabLayout slab) {
    return layout.slab(slab.slab().id()).orElseThrow().joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION && !j.locked())
        .toList();
  }

  /** How far the ends of two joints stand apart, the better way round. */
  private static double apart(Path a, Path b) {
    double ahead = Math.max(a.start().distance(b.start()), a.end().distance(b.end()));
    double back = Math.max(a.start().distance(b.end()), a.end().distance(b.start()));
    return Math.min(ahead, back);
  }

  void add(Steadiness other) {
    joints += other.joints;
    moved += other.moved;
    jumped += other.jumped;
    steps += other.steps;
    changes += other.changes;
    back += other.back;
  }

  int steps() {
    return steps;
  }

  /** How often the pattern changed. */
  int changes() {
    return changes;
  }

  /** How often it changed back to one that was there before. */
  int back() {
    return back;
  }

  /** The share of joints that moved more than the corner. */
  double moved() {
    return joints == 0 ? 0 : (double) moved / joints;
  }

  /** The share of joints that moved by over an inch more than the corner: past the next mark. */
  double jumped() {
    return joints == 0 ? 0 : (double) jumped / joints;
  }
}
