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
  /** Less is mixed by hand; a slip of the figure. */
  public static final Volume LEAST = Volume.cubicYards(0.1);

  /** More is no flatwork; a slip of the figure. */
  public static final Volume MOST = Volume.cubicYards(10_000);

  /** The narrowest strip: nothing narrower is struck by itself. */
  public static final Length NARROWEST = Length.feet(2);

  /** The widest strip that any machine spans. */
  public static final Length WIDEST = Length.feet(200);

  /** No limit. */
  public static final Pour UNLIMITED = new Pour(Optional.empty(), Optional.empty(), Kept.NOTHING);

  /** Whether there is any limit. */
  public boolean isLimited() {
    return most.isPresent() || strip.isPresent();
  }
}
