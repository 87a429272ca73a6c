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
 * @param preference which of several good layouts is wanted
 * @param kept what the file said besides
 */
public record Jointing(
    Optional<SpacingRule> rule,
    Optional<Length> maxSpacing,
    OptionalDouble aspect,
    Optional<Length> minPanel,
    Preference preference,
    Kept kept) {
  /** All defaults. */
  public static final Jointing DEFAULT =
      new Jointing(
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Preference.SHORTEST,
          Kept.NOTHING);

  /** These choices with another layout wanted. */
  public Jointing withPreference(Preference value) {
    return new Jointing(rule, maxSpacing, aspect, minPanel, value, kept);
  }

  /** These choices with the spacing taken from another rule. */
  public Jointing withRule(SpacingRule value) {
    return new Jointing(Optional.of(value), maxSpacing, aspect, minPanel, preference, kept);
  }

  /** These choices with a spacing of the user's own. */
  public Jointing withMaxSpacing(Length value) {
    return new Jointing(rule, Optional.of(value), aspect, minPanel, preference, kept);
  }

  /** These choices with another aspect. */
  public Jointing withAspect(double value) {
    return new Jointing(rule, maxSpacing, OptionalDouble.of(value), minPanel, preference, kept);
  }
}
