package org.jointwright.plan.edit;

import java.util.regex.Pattern;
import org.jointwright.plan.Plan;

/** Names for what is made from something that has one. */
final class FreeName {
  private static final Pattern NUMBER = Pattern.compile("\\s+\\d+$");

  private FreeName() {}

  /** The name with the next number that no slab and no fixed object of the plan has. */
  static String of(Plan plan, String name) {
    String stem = NUMBER.matcher(name).replaceFirst("");
    int n = 2;
    while (plan.slab(stem + " " + n).isPresent() || plan.fixedObject(stem + " " + n).isPresent()) {
      n++;
    }
    return stem + " " + n;
  }
}
