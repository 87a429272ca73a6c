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
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.file.save.SafeSave;
import org.jointwright.plan.Job;
import org.jointwright.plan.Plan;
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
  private static final String SHEET = "cut-sheet";

  /** As fine as most printers print, dots per inch. */
  private static final int PRINTED = 300;

  private CutSheets() {}

  /**
   * Writes the files of the cut sheet into a folder, which is made where there is none; none of
   * them before all are made.
   *
   * @param answer the plan with its joints, and what the rules say of it: what is open stands on
   *     the sheet
   * @param stem the start of the files' names
   * @param words the language and the measures it is printed in
   * @return the files
   * @throws IOException when they cannot be written; what was there is then as it was
   * @throws UnprintableException when a text of the plan has letters that the sheet's font lacks
   */
  public static List<Path> write(Answer answer, Path folder, String stem, Words words)
      throws IOException, UnprintableException {
    return write(answer, folder, stem, words, () -> true);
  }

  /**
   * The same, unless it is told to stop.
   *
   * @param goOn asked for each page; once it says no, nothing is written
   * @return the files; none where it was told to stop
   */
  public static List<Path> write(
      Answer answer, Path folder, String stem, Words words, BooleanSupplier goOn)
      throws IOException, UnprintableException {
    UnprintableException.check(answer.plan());
    SheetOptions options = options(answer, words);
    return save(CutSheet.of(answer.layout(), options), answer.plan(), options, folder, stem, goOn);
  }

  /** Writes pages, all of them or none. */
  static List<Path> save(
      List<Page> pages,
      Plan plan,
      SheetOptions options,
      Path folder,
      String stem,
      BooleanSupplier goOn)
      throws IOException {
    Optional<LocalDate> date = CutSheet.dateOf(plan, options);
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
    UnprintableException.check(answer.plan());
    List<Page> pages = CutSheet.of(answer.layout(), options(answer, words));
    Paper paper = pages.getFirst().paper();
    return SheetFiles.pictures(pages, PRINTED, goOn)
        .map(p -> new Printed(p, paper.width(), paper.height()));
  }

  /** What a sheet is printed with: what is open is said on it. */
  static SheetOptions options(Answer answer, Words words) {
    List<String> open =
        answer.findings().stream()
            .filter(f -> f.severity() != Severity.NOTE)
            .map(Finding::rule)
            .toList();
    // No date of today's: the same plan gives the same sheet.
    return new SheetOptions("", words, Paper.LETTER, open);
  }

  /** The start of the names of a plan's sheets: after its job, or else after its file. */
  public static String stem(Job job, Optional<Path> plan) {
    return FileNames.of(job).map(n -> n + "-" + SHEET).orElseGet(() -> stem(plan));
  }

  /** The start of the names of a plan's sheets, after its file. */
  public static String stem(Optional<Path> plan) {
    return stem(plan, SHEET);
  }

  /** The same for another kind of sheet. */
  static String stem(Optional<Path> plan, String sheet) {
    return plan.map(Path::getFileName)
        .map(Path::toString)
        .map(n -> n.endsWith(ENDING) ? n.substring(0, n.length() - ENDING.length()) : n)
        .map(n -> n.endsWith(".json") ? n.substring(0, n.length() - ".json".length()) : n)
        .map(n -> n + "-" + sheet)
        .orElse(sheet);
  }
}
