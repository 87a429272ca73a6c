package org.jointwright.designer.state;

import java.util.List;
import org.jointwright.fix.Fix;

/**
 * What can be done about a finding.
 *
 * @param generation the wish whose answer the finding is of
 * @param finding the number of the finding, from 1
 * @param fixes the fixes, the worthiest first; empty where none is known
 */
public record Offer(long generation, int finding, List<Fix> fixes) {
  /** Copies the list. */
  public Offer {
    fixes = List.copyOf(fixes);
  }
}
