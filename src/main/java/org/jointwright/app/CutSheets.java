package org.jointwright.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jointwright.plan.Job;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.SheetFiles;
import org.jointwright.text.Words;

/** Prints the crew's cut sheet, into files or as pictures for a printer. */
public final class CutSheets {
  /** As fine as most printers print, dots per inch. */
  private static final int PRINTED = 300;

  private CutSheets() {}

  /**
   * Writes the files of the cut sheet on letter paper, as {@link Sheets#write} does.
   *
   * @param goOn asked for each page; once it says no, nothing is written
   * @return the files; none where it was told to stop
   */
  public static List<Path> write(
      Answer answer, Path folder, String stem, Words words, BooleanSupplier goOn)
      throws IOException, UnprintableException {
    return Sheets.write(answer, Sheets.Wanted.of(SheetKind.CREW, words), folder, stem, goOn);
  }

  /**
   * Pages to be printed.
   *
   * @param pictures a PNG of each
   * @param width how wide a page is, millimetres
   * @param height how high it is, millimetres
   */
  public record Printed(List<byte[]> pictures, double width, double height) {
    /** Copies the list. */
    public Printed {
      pictures = List.copyOf(pictures);
    }
  }

  /**
   * The pages of the cut sheet as pictures that are fine enough to be printed.
   *
   * @param goOn asked for each page
   * @return empty once {@code goOn} has said no
   * @throws UnprintableException when a text of the plan has letters that the sheet's font lacks
   */
  public static Optional<Printed> printed(Answer answer, Words words, BooleanSupplier goOn)
      throws UnprintableException {
    SheetSet set = Sheets.set(answer, Sheets.Wanted.of(SheetKind.CREW, words));
    Paper paper = set.pages().getFirst().paper();
    return SheetFiles.pictures(set, PRINTED, goOn)
        .map(p -> new Printed(p, paper.width(), paper.height()));
  }

  /** The start of the names of a plan's sheets: after its job, or else after its file. */
  public static String stem(Job job, Optional<Path> plan) {
    return FileNames.of(job).orElseGet(() -> Sheets.stem(plan));
  }
}
