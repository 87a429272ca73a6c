package org.jointwright.practice;

import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.SpacingRule;

/**
 * How far apart contraction joints may stand. Published rules disagree, so each is a named choice;
 * {@link #DEFAULT} is this program's default, not a code.
 */
public final class Spacing {
  /** The rule where the plan names none: 30 times the thickness. */
  public static final SpacingRule DEFAULT = SpacingRule.T30;

  /** No rule gives more than this. */
  public static final Limit<Length> CAP =
      Limit.of(
          Length.feet(15),
          Documents.CIP_6_TEXT,
          Cited.read(Documents.ACI_330, "as copied in 1996", "section 2.7, table 2.7.1"),
          Documents.ACPA_JOINTING);

  /** How much longer than a walk is wide its panels may be. */
  public static final Limit<Double> WALK_LENGTHS =
      Limit.of(
          1.25,
          Cited.secondHand("agency wording for walks", "", "as quoted in a page on curbs"),
          Cited.read(Documents.TM_5_809_12, "1987", "panel length against width"));

  /** A walk's spacing is rounded up to whole steps of this. */
  public static final Limit<Length> WALK_STEP = Limit.of(Length.inches(6), Cited.ownChoice());

  /** Slabs narrower than this that carry people on foot are offered the walk's rule. */
  public static final Limit<Length> WALK_OFFERED = Limit.of(Length.feet(8), Cited.ownChoice());

  /** What a circle found by trying may be off, inches: it neither adds nor costs a step. */
  private static final double WIDTH_SLACK = 0.06;

  private Spacing() {}

  /** How many times the slab's thickness a rule allows. */
  public static Limit<Integer> times(SpacingRule rule) {
    return switch (rule) {
      case T24 -> Limit.of(24, pca("slump 4 to 6 in, stone under 3/4 in"), Documents.CIP_6_TEXT);
      case T30 ->
          Limit.of(
              30,
              Cited.read(Documents.ACI_330, "as copied in 1996", "section 2.7, table 2.7.1"),
              pca("slump 4 to 6 in, stone of 3/4 in and over"));
      case T36 -> Limit.of(36, pca("slump under 4 in"), Documents.CIP_6_TEXT);
      case WALK ->
          Limit.of(
              30, Cited.read(Documents.ACI_330, "as copied in 1996", "section 2.7, table 2.7.1"));
    };
  }

  private static Cited pca(String column) {
    return Cited.secondHand(
        Documents.PCA_FLOORS,
        "2nd ed. 1983",
        "spacing table, " + column + ", as quoted in a databook");
  }

  /** A rule's row for a thickness before the cap and before rounding. */
  public static Length uncapped(SpacingRule rule, Length thickness) {
    return Length.inches(times(rule).value() * thickness.inches());
  }

  /**
   * The longest a panel may be.
   *
   * @param thickness of the slab, above 0
   * @param jointing the user's choices; its own spacing overrides every rule
   * @param widthInches the width of the slab, by the largest circle that fits in it; read only for
   *     {@link SpacingRule#WALK}
   */
  public static Length longest(Length thickness, Jointing jointing, double widthInches) {
    Optional<Length> chosen = jointing.maxSpacing();
    if (chosen.isPresent()) {
      return chosen.get();
    }
    SpacingRule rule = jointing.rule().orElse(DEFAULT);
    double byThickness = Math.min(CAP.value().inches(), uncapped(rule, thickness).inches());
    if (rule != SpacingRule.WALK) {
      return Length.inches(byThickness);
    }
    return Length.inches(Math.min(byThickness, byWidth(widthInches)));
  }

  private static double byWidth(double widthInches) {
    double step = WALK_STEP.value().inches();
    return Math.ceil((WALK_LENGTHS.value() * widthInches - WIDTH_SLACK) / step) * step;
  }

  /** Where the longest spacing comes from, the plan's own figure first. */
  public static Cited source(Jointing jointing) {
    return jointing.maxSpacing().isPresent()
        ? Cited.plan()
        : times(jointing.rule().orElse(DEFAULT)).source();
  }

  /** Whether the longest panel of this slab depends on the slab's width. */
  public static boolean needsWidth(Jointing jointing) {
    return jointing.maxSpacing().isEmpty() && jointing.rule().orElse(DEFAULT) == SpacingRule.WALK;
  }
}
