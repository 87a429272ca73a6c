package org.jointwright.plan;

/** The rule the longest joint spacing is taken from; the figures are in {@code practice}. */
public enum SpacingRule {
  /** 24 times the thickness: small stone, wet mix. */
  T24("24t"),
  /** 30 times the thickness: the default. */
  T30("30t"),
  /** 36 times the thickness: low slump, large stone. */
  T36("36t"),
  /** A walk: 30 t, 15 ft, or 1.25 times the walk's width, whichever is least. */
  WALK("walk");

  private final String word;

  SpacingRule(String word) {
    this.word = word;
  }

  /** The word plan files use. */
  public String word() {
    return word;
  }
}
