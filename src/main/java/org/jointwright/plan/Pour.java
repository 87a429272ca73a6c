package org.jointwright.plan;

import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;

/**
 * How much is poured at a time, as far as the user limits it. Where a slab holds more, some of its
 * lines of joints are made construction joints.
 *
 * @param most the most concrete in one pour; empty for no limit
 * @param strip the widest strip, the longest board that the crew can strike; empty for no limit
 * @param kept what the file said besides
 */
public record Pour(Optional<Volume> most, Optional<Length> strip, Kept kept) {
  /** No limit. */
  public static final Pour UNLIMITED = new Pour(Optional.empty(), Optional.empty(), Kept.NOTHING);

  /** Whether there is any limit. */
  public boolean isLimited() {
    return most.isPresent() || strip.isPresent();
  }
}
