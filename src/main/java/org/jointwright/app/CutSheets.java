package org.jointwright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jointwright.file.save.SafeSave;
import org.jointwright.joint.Layout;
import org.jointwright.sheet.CutSheet;
import org.jointwright.sheet.Page;
import org.jointwright.sheet.Paper;
import org.jointwright.sheet.SheetOptions;
import org.jointwright.sheet.pdf.SheetFile;
import org.jointwright.sheet.pdf.SheetFiles;
import org.jointwright.text.Words;

/** Prints the crew's cut sheet: an SVG and a PNG of each page, and one PDF. */
public final class CutSheets {
  private static final String ENDING = ".jointwright.json";

  private CutSheets() {}

  /**
   * Writes the files of the cut sheet into a folder, which is made where there is none; none of
   * them before all are made.
   *
   * @param stem the start of the files' names
   * @param words the language and the measures it is printed in
   * @return the files
   * @throws IOException when they cannot be written; what was there is then as it was
   * @throws UnprintableException when a text of the plan has letters that the sheet's font lacks
   */
  public static List<Path> write(Layout layout, Path folder, String stem, Words words)
      throws IOException, UnprintableException {
    return write(layout, folder, stem, words, () -> true);
  }

  /**
   * The same, unless it is told to stop.
   *
   * @param goOn asked for each page; once it says no, nothing is written
   * @return the files; none where it was told to stop
   */
  public static List<Path> write(
      Layout layout, Path folder, String stem, Words words, BooleanSupplier goOn)
      throws IOException, UnprintableException {
    UnprintableException.check(layout.plan());
    // No date of today's: the same plan gives the same sheet.
    SheetOptions options = new SheetOptions("", words, Paper.LETTER);
    List<Page> pages = CutSheet.of(layout, options);
    Optional<LocalDate> date = CutSheet.dateOf(layout.plan(), options);
    Map<Path, byte[]> files = new LinkedHashMap<>();
    for (SheetFile file : SheetFiles.of(pages, stem, date, goOn)) {
      files.put(folder.resolve(file.name()), file.bytes());
    }
    if (files.isEmpty() || !goOn.getAsBoolean()) {
      return List.of();
    }
    Files.createDirectories(folder);
    SafeSave.saveAll(files);
    return new ArrayList<>(files.keySet());
  }

  /** The start of the names of a plan's sheets. */
  public static String stem(Optional<Path> plan) {
    String sheet = "cut-sheet";
    return plan.map(Path::getFileName)
        .map(Path::toString)
        .map(n -> n.endsWith(ENDING) ? n.substring(0, n.length() - ENDING.length()) : n)
        .map(n -> n.endsWith(".json") ? n.substring(0, n.length() - ".json".length()) : n)
        .map(n -> n + "-" + sheet)
        .orElse(sheet);
  }
}
