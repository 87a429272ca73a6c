package org.jointwright.check;

import java.util.List;
import java.util.Locale;
import org.jointwright.check.evidence.Judged;
import org.jointwright.practice.Cited;

/** One rule: looks at a slab and says what is wrong there. */
public interface Check {
  /** The rule's short name, a letter and a number. */
  String rule();

  /** How much a break weighs; single findings may be notes. */
  Severity severity();

  /** Where its limits come from, the weightiest first. */
  List<Cited> sources();

  /** What it finds on a slab, in a fixed order; empty where all is well. */
  List<Finding> findings(Judged slab);

  /** The key of the rule's name in words. */
  default String nameKey() {
    return "check." + rule().toLowerCase(Locale.ROOT) + ".name";
  }

  /** The key of a sentence that says what the rule asks for and why. */
  default String aboutKey() {
    return "check." + rule().toLowerCase(Locale.ROOT) + ".about";
  }
}
