package org.jointwright.practice;

import org.jointwright.measure.Length;
import org.jointwright.plan.How;

/** How deep a contraction joint must be to take the crack. */
public final class JointDepth {
  /** The share of the thickness that a groove or an ordinary cut takes. */
  public static final Limit<Double> SHARE =
      Limit.of(
          0.25,
          Documents.CIP_6_TEXT,
          Cited.secondHand("ACI 327R", "2014", "as quoted by an ACI question and answer"),
          Cited.read(Documents.MATTESON, "", "section 98.09(D)"));

  /** No groove or cut is shallower than this. */
  public static final Limit<Length> LEAST =
      Limit.of(
          Length.inches(1),
          Documents.CIP_6_TEXT,
          Cited.read(Documents.UFGS_03300N, "", "3.8.3, walks of 4 in"));

  /** An early-entry cut is at least this deep, whatever the thickness. */
  public static final Limit<Length> EARLY_ENTRY =
      Limit.of(
          Length.inches(1),
          Documents.CIP_6_TEXT,
          Cited.secondHand("ACI 224.4R", "2013", "as quoted by an ACI question and answer"));

  /** How contraction joints are made where nothing is said: our own choice, sheets say it. */
  public static final How USUAL = How.SAWN;

  private JointDepth() {}

  /** The least depth in a slab of that thickness, for a joint made that way. */
  public static Length least(Length thickness, How how) {
    return switch (how) {
      case EARLY_ENTRY -> EARLY_ENTRY.value();
      case TOOLED, SAWN ->
          Length.inches(Math.max(SHARE.value() * thickness.inches(), LEAST.value().inches()));
    };
  }

  /** The limit that {@link #least} comes from, for its sources. */
  public static Limit<?> limit(How how) {
    return switch (how) {
      case EARLY_ENTRY -> EARLY_ENTRY;
      case TOOLED, SAWN -> SHARE;
    };
  }
}
