package org.jointwright.designer.state;

import java.util.Optional;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.ByHand;

/**
 * What the program behind the window is asked to work out. A newer wish replaces an older one.
 *
 * @param generation grows by one with each wish
 * @param plan the plan to lay or to judge
 * @param lay whether joints are to be laid anew; else those in the plan are judged as they stand
 * @param before the last layout that was no first answer, as from before a drag; its pattern is
 *     kept where it can be
 * @param since the wish that the layout before answers; 0 where there is none
 * @param hand the slabs whose joints a hand has laid, which stay
 * @param isGivenUp whether it could not be worked out
 */
public record Wish(
    long generation,
    Plan plan,
    boolean lay,
    Optional<Layout> before,
    long since,
    ByHand hand,
    boolean isGivenUp) {
  /** This wish, given up. */
  Wish givenUp() {
    return new Wish(generation, plan, lay, before, since, hand, true);
  }
}
