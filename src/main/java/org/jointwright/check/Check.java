package org.jointwright.check;

import java.util.List;
import java.util.Locale;
import org.jointwright.check.evidence.Judged;
import org.jointwright.practice.Cited;
import org.jointwright.shape.Point;

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

  /**
   * What it says of one place, at its own weight and by all its sources.
   *
   * @param slab the slab
   * @param subject what it is about
   * @param at where
   * @param measured what was found
   * @param limit what is allowed there, in the same measure
   * @param key the message's key
   * @param arguments what fills the message's places
   */
  default Finding finding(
      Judged slab,
      Subject subject,
      Point at,
      double measured,
      double limit,
      String key,
      Object... arguments) {
    return finding(slab, sources(), subject, at, measured, limit, key, arguments);
  }

  /**
   * What it says of one place, at its own weight and by those of its sources that bear on it.
   *
   * @param slab the slab
   * @param by the sources, at least one, the weightiest first
   * @param subject what it is about
   * @param at where
   * @param measured what was found
   * @param limit what is allowed there, in the same measure
   * @param key the message's key
   * @param arguments what fills the message's places
   */
  default Finding finding(
      Judged slab,
      List<Cited> by,
      Subject subject,
      Point at,
      double measured,
      double limit,
      String key,
      Object... arguments) {
    return new Finding(
        rule(),
        severity(),
        slab.slab().id(),
        subject,
        at,
        measured,
        limit,
        key,
        List.of(arguments),
        by);
  }

  /** The key of the rule's name in words. */
  default String nameKey() {
    return nameKey(rule());
  }

  /** The key of the name in words of the rule of that short name. */
  static String nameKey(String rule) {
    return "check." + rule.toLowerCase(Locale.ROOT) + ".name";
  }

  /** The key of a sentence that says what the rule asks for and why. */
  default String aboutKey() {
    return "check." + rule().toLowerCase(Locale.ROOT) + ".about";
  }
}
