package org.jointwright.sheet.page;

import java.util.List;
import org.jointwright.drawing.Mark;

/**
 * One kind of sheet, its pages not numbered yet.
 *
 * @param title what it is
 * @param description what it shows, for whoever reads it by ear
 * @param paper its paper as it is laid out, lying or standing
 * @param ink the colours it is printed in
 * @param scale its scale as it is printed; empty where nothing is drawn to scale
 * @param leaves what is on each page but the title block
 */
public record Sheet(
    String title, String description, Paper paper, Ink ink, String scale, List<List<Mark>> leaves) {
  /** Copies the lists. */
  public Sheet {
    leaves = leaves.stream().map(List::copyOf).toList();
  }
}
