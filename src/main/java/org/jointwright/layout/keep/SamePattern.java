package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Side;
import org.jointwright.joint.SlabLayout;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Path;

/** Tells whether two layouts are one pattern: the same joints part the same panels. */
public final class SamePattern {
  private SamePattern() {}

  /**
   * Whether each panel before is there now, between the same joints.
   *
   * @param kept the joints of the pattern before and now
   */
  public static boolean is(SlabLayout before, SlabLayout now, List<Refit.Kept> kept) {
    if (before.panels().size() != now.panels().size()
        || before.loose().size() != now.loose().size()) {
      return false;
    }
    Map<String, Integer> old = new HashMap<>();
    Map<Path, Integer> paths = new HashMap<>();
    for (int i = 0; i < kept.size(); i++) {
      old.put(kept.get(i).before().id(), i);
      paths.put(kept.get(i).now().path(), i);
    }
    Map<String, Integer> other = new HashMap<>();
    for (Joint j : now.joints()) {
      Integer number = paths.get(j.path());
      if (number != null) {
        other.put(j.id(), number);
      }
    }
    return panels(before, old).equals(panels(now, other));
  }

  private static List<String> panels(SlabLayout layout, Map<String, Integer> numbers) {
    List<String> found = new ArrayList<>();
    for (Panel p : layout.panels()) {
      TreeSet<Integer> round = new TreeSet<>();
      for (Side s : p.outer()) {
        if (s.source() instanceof Source.OnJoint on && numbers.containsKey(on.joint())) {
          round.add(numbers.get(on.joint()));
        }
      }
      found.add(round + " " + p.holes().size());
    }
    found.sort(null);
    return found;
  }
}
