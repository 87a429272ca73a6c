package org.jointwright.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jointwright.plan.Against;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/** What a sheet warns of. Each kind of sheet carries those that fit the work it is for. */
public enum Caution {
  /**
   * Dust of cutting: 29 CFR 1926.1153, Table 1, walk-behind saws (read as the same table of Cal.
   * Title 8, section 1532.3).
   */
  DUST,
  /** Fresh concrete burns, pH 12 to 13: gloves, boots, rinse (a safety expert's page, read). */
  WET,
  /**
   * Buried lines: 49 CFR 196.103, call before digging and wait (read); 811 is the number in the
   * United States (read).
   */
  DIGGING,
  /** Traffic where a slab meets a street (common practice, no source). */
  TRAFFIC,
  /** Loads on young concrete (common practice, no source). */
  LOADS,
  /** That codes and licensed engineers come first. */
  CODES,
  /** What fresh concrete does to those who live there; source as for {@link #WET}. */
  KEEP_AWAY,
  /** That the plant, codes and engineers come first in the mix, and the tape before the order. */
  MIX;

  /** The sentences, in their order; traffic only where a slab of the plan meets a street. */
  public static List<String> say(Words words, Plan plan, Caution... cautions) {
    List<String> said = new ArrayList<>();
    for (Caution c : cautions) {
      if (c != TRAFFIC || meetsStreet(plan)) {
        said.add(words.say("sheet.caution." + c.name().toLowerCase(Locale.ROOT)));
      }
    }
    if (!words.isChecked()) {
      said.add(words.say("sheet.caution.unread"));
    }
    return said;
  }

  private static boolean meetsStreet(Plan plan) {
    return plan.slabs().stream()
        .flatMap(s -> s.edges().values().stream())
        .anyMatch(e -> e.against() == Against.STREET);
  }
}
