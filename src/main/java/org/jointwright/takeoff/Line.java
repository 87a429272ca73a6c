package org.jointwright.takeoff;

import java.util.List;
import org.jointwright.practice.Cited;

/**
 * One line of an order.
 *
 * @param item what it is
 * @param of which of its kind: a slab, a depth, a size, for the words of the item; may be empty
 * @param amount how much
 * @param how how it was worked out, step by step
 * @param sources where the figures come from that are not the plan's
 */
public record Line(Item item, List<Object> of, Amount amount, List<Step> how, List<Cited> sources) {
  /** Copies the lists. */
  public Line {
    of = List.copyOf(of);
    how = List.copyOf(how);
    sources = List.copyOf(sources);
  }
}
