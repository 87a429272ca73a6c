package org.jointwright.plan;

/** How a contraction joint is made. */
public enum How {
  /** Grooved in the fresh concrete. */
  TOOLED("tooled"),
  /** Sawn when the concrete bears it, the same day as a rule. */
  SAWN("sawn"),
  /** Sawn shallow within the first hours. */
  EARLY_ENTRY("early-entry");

  private final String word;

  How(String word) {
    this.word = word;
  }

  /** The word plan files use. */
  public String word() {
    return word;
  }
}
