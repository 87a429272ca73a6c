package org.jointwright.sheet.pdf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jointwright.sheet.Page;
import org.jointwright.sheet.svg.SvgPage;

/** The files of a sheet: one PDF of all its pages, and an SVG and a PNG of each. */
public final class SheetFiles {
  /** Fine enough to read the smallest figures on a screen. */
  private static final int DOTS_PER_INCH = 200;

  private SheetFiles() {}

  /**
   * The files of the pages of one sheet.
   *
   * @param stem the start of the files' names; pages after the first add {@code -2}, {@code -3}
   * @param date the sheet's date where it has one
   * @param goOn asked for each page
   * @return none once {@code goOn} has said no
   */
  public static List<SheetFile> of(
      List<Page> pages, String stem, Optional<LocalDate> date, BooleanSupplier goOn) {
    List<SheetFile> files = new ArrayList<>();
    if (!goOn.getAsBoolean()) {
      return List.of();
    }
    byte[] pdf = PdfSheet.bytes(pages, pages.getFirst().title(), date);
    files.add(new SheetFile(stem + ".pdf", pdf));
    for (int i = 0; i < pages.size(); i++) {
      if (!goOn.getAsBoolean()) {
        return List.of();
      }
      String name = i == 0 ? stem : stem + "-" + (i + 1);
      files.add(new SheetFile(name + ".svg", SvgPage.bytes(pages.get(i))));
      files.add(new SheetFile(name + ".png", PdfSheet.picture(pdf, i, DOTS_PER_INCH)));
    }
    return files;
  }

  /**
   * A PNG of each page.
   *
   * @param goOn asked for each page
   * @return empty once {@code goOn} has said no
   */
  public static Optional<List<byte[]>> pictures(
      List<Page> pages, int dotsPerInch, BooleanSupplier goOn) {
    byte[] pdf = PdfSheet.bytes(pages, pages.getFirst().title(), Optional.empty());
    List<byte[]> pictures = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      if (!goOn.getAsBoolean()) {
        return Optional.empty();
      }
      pictures.add(PdfSheet.picture(pdf, i, dotsPerInch));
    }
    return Optional.of(pictures);
  }
}
