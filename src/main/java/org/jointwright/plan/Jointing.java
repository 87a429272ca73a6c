package org.jointwright.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jointwright.measure.Length;

/**
 * The user's choices for a slab's joints; what is empty follows the default.
 *
 * @param rule where the spacing comes from
 * @param maxSpacing overrides the rule
 * @param aspect the longest side over the shortest, 1.25, 1.5 or 2.0 as a rule
 * @param minPanel the narrowest panel
 * @param kept what the file said besides
 */
public record Jointing(
    Optional<SpacingRule> rule,
    Optional<Length> maxSpacing,
    OptionalDouble aspect,
    Optional<Length> minPanel,
    Kept kept) {
  /** All defaults. */
  public static final Jointing DEFAULT =
      new Jointing(
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Kept.NOTHING);
}
