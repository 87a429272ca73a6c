package org.jointwright.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.svg.SvgPage;

/** The files of a sheet: one PDF of all its pages, and an SVG and a PNG of each. */
public final class SheetFiles {
  /** Fine enough to read the smallest figures on a screen. */
  private static final int DOTS_PER_INCH = 200;

  private SheetFiles() {}

  /**
   * The files of pages that are printed together.
   *
   * @param whole the name of the PDF, without its ending
   * @param names those of the pages, a name for each sheet; its pages after the first add {@code
   *     -2}, {@code -3}
   * @param goOn asked for each page
   * @return none once {@code goOn} has said no
   */
  public static List<SheetFile> of(
      SheetSet set, String whole, List<String> names, BooleanSupplier goOn) {
    if (!goOn.getAsBoolean()) {
      return List.of();
    }
    // None of them is needed for the PDF and the pictures that are painted from it.
    CompletableFuture<List<byte[]>> drawings =
        CompletableFuture.supplyAsync(
            () ->
                IntStream.range(0, set.pages().size())
                    .mapToObj(page -> SvgPage.bytes(set, page))
                    .toList());
    byte[] pdf = PdfSheet.bytes(set);
    Optional<List<byte[]>> pictures = PdfSheet.pictures(set, pdf, DOTS_PER_INCH, goOn);
    List<byte[]> svg = drawings.join();
    if (pictures.isEmpty()) {
      return List.of();
    }
    List<SheetFile> files = new ArrayList<>();
    files.add(new SheetFile(whole + ".pdf", pdf));
    for (int sheet = 0; sheet < names.size(); sheet++) {
      SheetSet.Entry entry = set.entries().get(sheet);
      for (int i = 0; i < entry.count(); i++) {
        String name = i == 0 ? names.get(sheet) : names.get(sheet) + "-" + (i + 1);
        int page = entry.first() - 1 + i;
        files.add(new SheetFile(name + ".svg", svg.get(page)));
        files.add(new SheetFile(name + ".png", pictures.get().get(page)));
      }
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
      SheetSet set, int dotsPerInch, BooleanSupplier goOn) {
    return PdfSheet.pictures(set, PdfSheet.bytes(set), dotsPerInch, goOn);
  }
}
