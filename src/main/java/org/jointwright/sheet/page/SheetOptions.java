package org.jointwright.sheet.page;

import java.util.List;
import org.jointwright.text.Words;

/**
 * What a sheet is printed with.
 *
 * @param date the sheet's date, ISO 8601 {@code yyyy-mm-dd} or empty, for jobs that say none
 * @param words the reader's language and units
 * @param paper the paper
 * @param open the rules that the layout breaks, one for each finding that is open, so that the
 *     paper does not pass for a clean plan
 * @param how whether the order sheet says how its amounts were worked out
 */
public record SheetOptions(String date, Words words, Paper paper, List<String> open, boolean how) {
  /** Copies the list. */
  public SheetOptions {
    open = List.copyOf(open);
  }

  /** With nothing open, amounts alone. */
  public SheetOptions(String date, Words words, Paper paper) {
    this(date, words, paper, List.of(), false);
  }
}
