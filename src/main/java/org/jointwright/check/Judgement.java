package org.jointwright.check;

import java.util.List;

/**
 * What all the rules found.
 *
 * @param findings by slab, then by rule
 * @param crashed the rules that could not be judged; while there are any, the findings are not all
 */
public record Judgement(List<Finding> findings, List<CrashedRule> crashed) {
  /** Copies the lists. */
  public Judgement {
    findings = List.copyOf(findings);
    crashed = List.copyOf(crashed);
  }

  /** Whether every rule was judged. */
  public boolean isComplete() {
    return crashed.isEmpty();
  }

  /** The findings of one weight. */
  public List<Finding> of(Severity severity) {
    return findings.stream().filter(f -> f.severity() == severity).toList();
  }

  /** Whether no rule that must hold is broken, and all were judged. */
  public boolean isClean() {
    return isComplete() && of(Severity.MUST).isEmpty();
  }
}
