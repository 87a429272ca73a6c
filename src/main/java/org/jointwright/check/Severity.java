package org.jointwright.check;

/** How much a finding weighs. */
public enum Severity {
  /** The layout is wrong. */
  MUST,
  /** It could be better. */
  SHOULD,
  /** Worth knowing. */
  NOTE
}
