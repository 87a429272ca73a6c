package org.jointwright.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jointwright.sheet.OrderSheet;
import org.jointwright.sheet.Page;
import org.jointwright.sheet.SheetOptions;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;

/** Prints the order sheet: an SVG and a PNG of each page, and one PDF. */
public final class OrderSheets {
  private static final String NAME = "order-sheet";

  private OrderSheets() {}

  /**
   * Writes the files of the order sheet into a folder, as {@link CutSheets} does those of the cut
   * sheet.
   *
   * @throws IOException when they cannot be written; what was there is then as it was
   * @throws UnprintableException when a text of the plan has letters that the sheet's font lacks
   */
  public static List<Path> write(Answer answer, Path folder, String stem, Words words)
      throws IOException, UnprintableException {
    UnprintableException.check(answer.plan());
    SheetOptions options = CutSheets.options(answer, words);
    Takeoff takeoff = Takeoff.of(answer.layout(), words.units());
    List<Page> pages = OrderSheet.of(answer.plan(), takeoff, options);
    return CutSheets.save(pages, answer.plan(), options, folder, stem, () -> true);
  }

  /** The start of the names of a plan's order sheets. */
  public static String stem(Optional<Path> plan) {
    return CutSheets.stem(plan, NAME);
  }
}
