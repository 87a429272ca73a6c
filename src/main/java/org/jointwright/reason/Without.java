package org.jointwright.reason;

import java.util.List;
import org.jointwright.check.Finding;

/**
 * What would be if joints were left out, found by leaving them out and judging the rest.
 *
 * @param joints the ids of the joints that were left out
 * @param breaks what must hold and would then break, or break worse; the weightiest first
 * @param worse what should hold and would then not
 * @param before what the slab comes to with the joints
 * @param after what it comes to without
 * @param cracks where it would likely crack then
 */
public record Without(
    List<String> joints,
    List<Finding> breaks,
    List<Finding> worse,
    Outcome before,
    Outcome after,
    List<LikelyCrack> cracks) {
  /** Copies the lists. */
  public Without {
    joints = List.copyOf(joints);
    breaks = List.copyOf(breaks);
    worse = List.copyOf(worse);
    cracks = List.copyOf(cracks);
  }

  /** Whether no rule that must hold would break. */
  public boolean breaksNothing() {
    return breaks.isEmpty();
  }
}
