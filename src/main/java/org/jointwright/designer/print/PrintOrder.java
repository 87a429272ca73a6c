package org.jointwright.designer.print;

import java.util.List;
import org.jointwright.app.Printing;

/**
 * What is to be printed.
 *
 * @param printer the printer's name
 * @param pages the pages that were chosen, in their order; each is as large as its paper
 */
public record PrintOrder(String printer, List<Printing.Leaf> pages) {
  /** Copies the list. */
  public PrintOrder {
    pages = List.copyOf(pages);
  }
}
