package org.jointwright.fix;

import java.util.Locale;
import java.util.Optional;
import org.jointwright.check.Finding;
import org.jointwright.practice.Cited;
import org.jointwright.practice.JointRuns;

/**
 * What comes of a finding that is left as it is, and how a crew looks after it. Holds no words.
 *
 * @param key the key of what it says
 * @param source where that comes from
 */
public record IfLeft(String key, Cited source) {
  /** Settings that clash say themselves which of them to change. */
  private static final String CLASH = "C1";

  /** What is to be said of a finding; empty where its own words say it. */
  public static Optional<IfLeft> of(Finding finding) {
    Cited source =
        switch (finding.rule()) {
          case "S1" -> JointRuns.CONTINUOUS;
          case "S7" -> JointRuns.MISSED;
          default -> JointRuns.LOOKED_AFTER;
        };
    return finding.rule().equals(CLASH)
        ? Optional.empty()
        : Optional.of(new IfLeft("fix.left." + finding.rule().toLowerCase(Locale.ROOT), source));
  }
}
