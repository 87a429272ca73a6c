package org.jointwright.designer.state;

import java.util.Optional;
import org.jointwright.reason.Reason;

/**
 * Why a joint is where it is, as it was worked out behind the window.
 *
 * @param generation of the layout that was asked about
 * @param pick the joint
 * @param reason the answer; empty where it could not be worked out
 */
public record WhyHere(long generation, Pick.AtJoint pick, Optional<Reason> reason) {
  /** Whether it answers a question about that joint of that layout. */
  public boolean answers(Laid laid, Pick.AtJoint other) {
    return generation == laid.generation() && pick.equals(other);
  }
}
